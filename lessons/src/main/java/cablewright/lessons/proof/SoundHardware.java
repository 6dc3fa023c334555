// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.proof;

import cablewright.lessons.generation.HardwareSizes;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.line.CableType;

/** Compares hardware that is to count as sound with what well made hardware is, by {@link HardwareSizes}. */
final class SoundHardware {

    /** Sizes in files are rounded. */
    private static final double ROUNDING = 1.05;

    private SoundHardware() {}

    static boolean isWellMade(Cable cable, String eventId) {
        return cable.event(eventId)
                .map(event -> isWellMade(event, cable.runAt(event.startMetres()).type()))
                .orElse(true);
    }

    private static boolean isWellMade(Event event, CableType type) {
        HardwareSizes sizes = new HardwareSizes(type);
        double at = event.startMetres();
        if (event instanceof Splice splice) {
            Splice good = (Splice) sizes.splice("good", at, 0);
            return splice.excessInductanceHenries() <= ROUNDING * good.excessInductanceHenries()
                    && splice.excessCapacitanceFarads() * square(type.nominalImpedanceOhms())
                            <= ROUNDING * good.excessInductanceHenries();
        }
        if (event instanceof Connector connector) {
            Connector good = (Connector) sizes.connector("good", at, connector.lengthMetres(), 0);
            return mismatch(connector, type) <= ROUNDING * mismatch(good, type);
        }
        if (event instanceof Tap tap) {
            Tap good = (Tap) sizes.tap("good", at, tap.throughLossDecibels(), 0);
            return tap.strayCapacitanceFarads() <= ROUNDING * good.strayCapacitanceFarads();
        }
        return true;
    }

    private static double square(double x) {
        return x * x;
    }

    /** What a short length of another impedance reflects grows with its length and with n − 1/n. */
    private static double mismatch(Connector connector, CableType type) {
        double n = connector.impedanceOhms() / type.nominalImpedanceOhms();
        return connector.lengthMetres() * Math.abs(n - 1 / n);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Interference;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FullEchoTest {

    private static final Instrument FAST =
            new Instrument(75, 1e11, 1, 0, 1e-9, 0, 24, 100, 65_536, 0, Interference.none());
    private static final Settings SETTINGS = new Settings(new HalfSine(20e-9), 0.85, 120, 0, 1);

    private static Cable cable(CableType type, List<Event> events) {
        return new Cable("line", List.of(new Run(type, 100)), events, FarEnd.Terminated.byOhms(75));
    }

    private static double volts(Cable cable, LineEnd end, double metres) {
        return new FullEcho(FAST, SETTINGS).volts(cable, end, metres).orElseThrow();
    }

    @Test
    void onALosslessMatchedLineAllComesBackFromAnywhere() {
        Cable cable = cable(Catalogue.standard().type("lossless-75"), List.of());
        assertEquals(1, volts(cable, LineEnd.NEAR, 30), 1e-3);
        assertEquals(1, volts(cable, LineEnd.FAR, 30), 1e-3);
        assertEquals(1, volts(cable, LineEnd.NEAR, 100), 1e-3);
    }

    /** A resistor R across a line lets 2R/(2R + Z) through: with R = Z/2 a half each way (first principles). */
    @Test
    void aShuntOfHalfTheImpedanceLeavesAQuarterOfTheEchoBehindIt() {
        Event shunt = new ShuntPart("s", 40, Lumped.resistor(37.5));
        Cable cable = cable(Catalogue.standard().type("lossless-75"), List.of(shunt));
        assertEquals(0.25, volts(cable, LineEnd.NEAR, 60), 1e-3);
        assertEquals(1, volts(cable, LineEnd.NEAR, 20), 1e-3);
        assertEquals(1, volts(cable, LineEnd.FAR, 60), 1e-3);
    }

    /** Heaviside's distortionless line, R/L = G/C, has the loss e^(−l √(RG)) at all frequencies. */
    @Test
    void theLossOfADistortionlessLineIsTakenThereAndBack() {
        double velocity = 0.85 * 299_792_458.0;
        double ohmsPerMetre = 0.15;
        double siemensPerMetre = ohmsPerMetre / (75 * 75);
        ConstantsSection section =
                new ConstantsSection(ohmsPerMetre, 75 / velocity, 0, siemensPerMetre, 1 / (75 * velocity), List.of());
        CableType type = new CableType(
                "distortionless", "Distortionless", CableFamily.REFERENCE, section, "Definition.", 75, 0.85, List.of());
        double expected = Math.exp(-2 * 50 * Math.sqrt(ohmsPerMetre * siemensPerMetre));
        assertEquals(expected, volts(cable(type, List.of()), LineEnd.NEAR, 50), 1e-3);
    }

    @Test
    void nothingIsToldOfPlacesBeyondAFullReflectionOrTheRange() {
        CableType type = Catalogue.standard().type("lossless-75");
        Cable broken = cable(type, List.of(new BrokenConductor("b", 50, OptionalDouble.empty())));
        FullEcho echo = new FullEcho(FAST, SETTINGS);
        assertTrue(echo.volts(broken, LineEnd.NEAR, 60).isEmpty());
        assertTrue(echo.volts(broken, LineEnd.FAR, 60).isPresent());
        FullEcho near = new FullEcho(FAST, SETTINGS.withRangeMetres(50));
        assertTrue(near.volts(cable(type, List.of()), LineEnd.NEAR, 90).isEmpty());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import java.util.List;

/** Plain cables for tests. */
public final class TestCables {

    private TestCables() {}

    /** A type of a given cross-section. */
    public static CableType type(CrossSection section) {
        return new CableType(
                "test-line",
                "Line of a test",
                CableFamily.REFERENCE,
                section,
                "made for a test",
                section.impedanceOhms(),
                Math.min(1, section.velocityFraction()),
                List.of());
    }

    /** A lossless type of given impedance and velocity [m/s]. */
    public static CableType lossless(double ohms, double metresPerSecond) {
        return type(ConstantsSection.lossless(ohms, metresPerSecond / 299_792_458.0));
    }

    /** A type of constant R, L, C per metre. */
    public static CableType constants(double r, double l, double k, double g, double c) {
        return type(new ConstantsSection(r, l, k, g, c, List.of()));
    }

    /** One run with events. */
    public static Cable cable(CableType type, double metres, FarEnd end, Event... events) {
        return new Cable("Cable of a test", List.of(new Run(type, metres)), List.of(events), end);
    }
}

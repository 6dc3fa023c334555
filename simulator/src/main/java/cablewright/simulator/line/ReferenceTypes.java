// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.Dielectric;
import java.util.List;

/** Lines for reference and for argument: an air line and lines without loss. */
final class ReferenceTypes {

    private ReferenceTypes() {}

    static List<CableType> all() {
        return List.of(airLine(), lossless(50, 1), lossless(75, 0.85), lossless(100, 0.7));
    }

    private static CableType airLine() {
        CoaxSection section =
                CoaxSection.solid(3.04e-3, 7e-3, Conductor.COPPER, 1e-3, Conductor.COPPER, Dielectric.AIR);
        return new CableType(
                "air-line-50",
                "Air line 7 mm, copper",
                CableFamily.REFERENCE,
                section,
                "Diameters of the 7 mm precision line (IEEE Std 287, from memory); first principles.",
                50,
                1,
                List.of());
    }

    private static CableType lossless(int impedance, double velocity) {
        return new CableType(
                "lossless-" + impedance,
                "Line without loss, " + impedance + " ohm, " + Math.round(100 * velocity) + " % velocity",
                CableFamily.REFERENCE,
                ConstantsSection.lossless(impedance, velocity),
                "Definition: z = s L, y = s C.",
                impedance,
                velocity,
                List.of());
    }
}

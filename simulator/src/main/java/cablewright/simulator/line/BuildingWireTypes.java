// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/**
 * Flat building cable, two insulated copper conductors with a bare one between, PVC: line to neutral as a pair.
 *
 * <p>Common practice, no source: no standard limits its high-frequency figures; spacing, effective permittivity 2.3 and
 * loss tangent 0.03 of PVC with paper and air are typical. Expect 10 % either way in impedance and velocity.
 */
final class BuildingWireTypes {

    private static final double VELOCITY = 0.66;

    private BuildingWireTypes() {}

    static List<CableType> all() {
        return List.of(type("14", 1.6277e-3, 4.1e-3, 2.8e-3), type("12", 2.0525e-3, 4.9e-3, 3.3e-3));
    }

    private static CableType type(String gauge, double diameter, double spacing, double insulation) {
        double permittivity = 1 / (VELOCITY * VELOCITY);
        PairSection section = PairSection.solid(
                diameter,
                spacing,
                insulation,
                1,
                Conductor.COPPER,
                new ConstantLossTangent(permittivity, 0.03, 1e8),
                3.4);
        return new CableType(
                "building-" + gauge,
                "Building wire " + gauge + " AWG, flat, PVC, line to neutral",
                CableFamily.BUILDING_WIRE,
                section,
                "Diameter ASTM B258 (from memory); the rest common practice, no source.",
                section.impedanceOhms(),
                VELOCITY,
                List.of());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.surface.CladWire;
import cablewright.simulator.crosssection.surface.TubeShield;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/**
 * Hardline of the cable plant: copper-clad aluminium centre (skin 2.5 % of the diameter, 10 % of the section), foam
 * of 87 % velocity and loss tangent 1e-4, seamless aluminium tube. Centre and wall as usual for each size, from
 * memory; inner diameter of the tube for 75 ohm exactly.
 */
final class PlantCoaxTypes {

    private static final double VELOCITY = 0.87;
    private static final double SHAPE = Math.exp(75 / (59.9584915921 * VELOCITY));
    private static final List<Double> MEGAHERTZ = List.of(5.0, 55.0, 400.0, 750.0, 1000.0);

    private PlantCoaxTypes() {}

    static List<CableType> all() {
        return List.of(
                hardline("500", 2.77e-3, 0.61e-3, List.of(0.16, 0.54, 1.53, 2.16, 2.52)),
                hardline("625", 3.43e-3, 0.76e-3, List.of(0.13, 0.45, 1.27, 1.78, 2.09)),
                hardline("750", 4.24e-3, 0.89e-3, List.of(0.11, 0.37, 1.05, 1.48, 1.74)),
                hardline("875", 4.93e-3, 1.02e-3, List.of(0.09, 0.33, 0.91, 1.29, 1.53)));
    }

    private static CableType hardline(String size, double core, double wall, List<Double> decibel) {
        double outer = core * SHAPE;
        CladWire wire = new CladWire(0.5 * core * 0.95, 0.5 * core, Conductor.ALUMINIUM, Conductor.COPPER);
        TubeShield shield = new TubeShield(0.5 * outer, wall, Conductor.ALUMINIUM);
        return new CableType(
                "hardline-" + size,
                "Hardline ." + size + " inch, foam dielectric, seamless aluminium tube",
                CableFamily.COAX_PLANT,
                CoaxSection.of(
                        wire, core, shield, outer, new ConstantLossTangent(1 / (VELOCITY * VELOCITY), 1e-4, 1e8)),
                "Greatest attenuation at 20 degrees Celsius as in ANSI/SCTE 15 and data sheets of this class (from"
                        + " memory). Cross-section from first principles.",
                75,
                VELOCITY,
                Points.perHundredFeet(MEGAHERTZ, decibel));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.surface.CladWire;
import cablewright.simulator.crosssection.surface.FoilAndBraid;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.crosssection.surface.TubeShield;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/**
 * Foam drop coax: copper-clad steel centre, gas-injected polyethylene of 85 % velocity, foil and braid of aluminium.
 *
 * <p>Centre: steel of 5.8e6 S/m and mu_r 100, copper skin 2.4 to 4 % of the diameter (assumptions; series 6 then has
 * the published 28 to 31 ohm per 1000 ft). Outer diameter: 75 ohm exactly. Foil thickness and gap to the braid:
 * fitted to the published attenuation within 6 %; aluminium of the foil at half conductivity for folds and glue.
 * Braid resistance: usual for 60 % cover, from memory.
 */
final class DropCoaxTypes {

    private static final double SHAPE = Math.exp(75 / (59.9584915921 * 0.85));
    private static final List<Double> MEGAHERTZ = List.of(5.0, 55.0, 211.0, 400.0, 750.0, 1000.0);
    private static final Conductor FOIL = Conductor.ALUMINIUM.withConductivityFactor(0.5);

    private DropCoaxTypes() {}

    static List<CableType> all() {
        List<Double> loss6 = List.of(0.58, 1.60, 3.05, 4.15, 5.65, 6.55);
        double core6 = 1.02362e-3;
        SurfaceImpedance shield6 = shield(core6, 15e-6, 0.036, 10e-9);
        return List.of(
                type(
                        "59",
                        clad(0.8128e-3, 0.040),
                        0.8128e-3,
                        shield(0.8128e-3, 13e-6, 0.045, 20e-9),
                        List.of(0.86, 2.05, 3.80, 5.10, 6.97, 8.12)),
                type("6", clad(core6, 0.031), core6, shield6, loss6),
                type(
                        "11",
                        clad(1.62814e-3, 0.024),
                        1.62814e-3,
                        shield(1.62814e-3, 18e-6, 0.020, 10e-9),
                        List.of(0.38, 0.96, 1.90, 2.60, 3.65, 4.35)));
    }

    private static CladWire clad(double diameter, double skinShare) {
        return new CladWire(0.5 * diameter * (1 - 2 * skinShare), 0.5 * diameter, Conductor.STEEL, Conductor.COPPER);
    }

    private static SurfaceImpedance shield(double core, double foil, double braidResistance, double gap) {
        return new FoilAndBraid(new TubeShield(0.5 * core * SHAPE, foil, FOIL), braidResistance, gap);
    }

    private static CableType type(
            String series, SurfaceImpedance wire, double core, SurfaceImpedance shield, List<Double> decibel) {
        return new CableType(
                "drop-" + series + "-foam",
                "Drop coax series " + series + ", foam dielectric, copper-clad steel centre (not the solid RG type)",
                CableFamily.COAX_DROP,
                CoaxSection.of(wire, core, shield, core * SHAPE, new ConstantLossTangent(1 / (0.85 * 0.85), 1e-4, 1e8)),
                "Greatest attenuation at 20 degrees Celsius as in ANSI/SCTE 74 (from memory). Copper-clad steel and foam"
                        + " from first principles; foil thickness fitted to that attenuation.",
                75,
                0.85,
                Points.perHundredFeet(MEGAHERTZ, decibel));
    }
}

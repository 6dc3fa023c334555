// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.surface.CladWire;
import cablewright.simulator.crosssection.surface.RoundWire;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.crosssection.surface.TubeShield;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/**
 * Coax with solid polyethylene of 65.9 % velocity and a copper braid, as in MIL-DTL-17.
 *
 * <p>Diameter over the dielectric from the standard (from memory); the core's electrical diameter follows from the
 * nominal impedance (a strand is a few per cent larger). The braid is a tube whose apparent conductivity, together
 * with the apparent loss tangent, is fitted to the nominal attenuation, and whose wall gives the braid's usual DC
 * resistance (from memory).
 */
final class SolidCoaxTypes {

    private static final double VELOCITY = 0.659;
    private static final List<Double> MEGAHERTZ = List.of(100.0, 400.0, 1000.0);

    private SolidCoaxTypes() {}

    static List<CableType> all() {
        return List.of(
                type("58", 50, 2.95e-3, false, 0.0145, 0.0997, 6e-4, List.of(4.9, 11.0, 20.0)),
                type("59", 75, 3.71e-3, true, 0.008, 0.48, 4e-4, List.of(3.4, 7.0, 12.0)),
                type("6", 75, 4.70e-3, true, 0.007, 0.25, 4e-4, List.of(2.9, 6.0, 11.0)),
                type("11", 75, 7.24e-3, false, 0.004, 0.0673, 3e-4, List.of(2.3, 4.8, 7.8)),
                type("213", 50, 7.24e-3, false, 0.004, 0.122, 4e-4, List.of(2.1, 4.5, 8.0)));
    }

    private static CableType type(
            String number,
            double impedance,
            double outer,
            boolean cladSteel,
            double braidResistance,
            double braidConductivity,
            double lossTangent,
            List<Double> decibel) {
        double core = outer / Math.exp(impedance / (59.9584915921 * VELOCITY));
        SurfaceImpedance wire = cladSteel
                ? new CladWire(0.42 * core, 0.5 * core, Conductor.STEEL, Conductor.COPPER)
                : new RoundWire(0.5 * core, Conductor.COPPER);
        TubeShield shield = TubeShield.forBraid(
                0.5 * outer, braidResistance, Conductor.COPPER.withConductivityFactor(braidConductivity));
        ConstantLossTangent dielectric = new ConstantLossTangent(1 / (VELOCITY * VELOCITY), lossTangent, 1e8);
        return new CableType(
                "coax-" + number + "-solid",
                "Coax RG-" + number + " class, solid polyethylene" + (cladSteel ? ", copper-clad steel centre" : "")
                        + " (not the foam drop type)",
                CableFamily.COAX_SOLID,
                CoaxSection.of(wire, core, shield, outer, dielectric),
                "Nominal attenuation, impedance and velocity of the MIL-DTL-17 type (from memory); core from impedance,"
                        + " braid fitted to the attenuation.",
                impedance,
                VELOCITY,
                Points.perHundredFeet(MEGAHERTZ, decibel));
    }
}

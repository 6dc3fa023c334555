// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.PairBundle;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.PhysicalConstants;
import java.util.ArrayList;
import java.util.List;

/**
 * Twisted pairs of premises data cabling, 100 ohm, solid copper, unshielded.
 *
 * <p>Spacing from impedance and velocity, loss from first principles. The published figures are the limits of TIA-568
 * for 100 m of horizontal cable, which a good cable stays 5 to 20 % below: the wire model that the ITU fitted to measured
 * cable of category 5 (Recommendation G.9701, appendix I) is 0.96 of the limit at 1 MHz, 0.89 at 10 and 0.83 at 100.
 *
 * <p>Four pairs stand on a ring, neighbours 2.1 spacings apart (category 6: 2.3, kept apart by a spine; common practice, no
 * source); eddy currents in each other's wires add about 2 %.
 */
final class DataPairTypes {

    private static final double IMPEDANCE = 100;
    private static final double[] MEGAHERTZ = {1, 4, 10, 16, 31.25, 62.5, 100, 250, 500};

    private DataPairTypes() {}

    static List<CableType> all() {
        return List.of(
                type("cat-5e", "Category 5e pair, 24 AWG", 0.511e-3, 0.69, 1.04, 2.1, 1.967, 0.023, 0.05, 100),
                type("cat-6", "Category 6 pair, 23 AWG", 0.565e-3, 0.69, 1.05, 2.3, 1.808, 0.017, 0.2, 250),
                type("cat-6a", "Category 6A pair, 23 AWG", 0.574e-3, 0.68, 1.05, 2.3, 1.82, 0.0091, 0.25, 500));
    }

    private static CableType type(
            String id,
            String title,
            double diameter,
            double velocity,
            double takeUp,
            double pitchOverSpacing,
            double rootTerm,
            double linearTerm,
            double inverseTerm,
            double topMegahertz) {
        double root = 1 / (velocity * takeUp);
        double spacing = diameter * Math.cosh(Math.PI * IMPEDANCE * root / PhysicalConstants.ETA_0);
        PairSection section = PairSection.solid(
                        diameter,
                        spacing,
                        spacing,
                        takeUp,
                        Conductor.COPPER,
                        new ConstantLossTangent(root * root, 4e-4, 1e8),
                        2.3)
                .among(new PairBundle(4, pitchOverSpacing * spacing));
        List<AttenuationPoint> limits = new ArrayList<>();
        for (double f : MEGAHERTZ) {
            if (f <= topMegahertz) {
                double limit = rootTerm * Math.sqrt(f) + linearTerm * f + inverseTerm / Math.sqrt(f);
                limits.add(AttenuationPoint.perHundredMetres(f, limit));
            }
        }
        return new CableType(
                id,
                title + ", solid, unshielded",
                CableFamily.DATA_PAIR,
                section,
                "Attenuation: limit of TIA-568 for horizontal cable (second-hand; 6A from memory). Diameter and velocity as"
                        + " usual for the class, from memory.",
                IMPEDANCE,
                velocity,
                limits);
    }
}

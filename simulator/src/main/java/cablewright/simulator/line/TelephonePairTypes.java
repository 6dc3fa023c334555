// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.PairBundle;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.PhysicalConstants;
import java.util.List;

/**
 * Outside-plant telephone pairs with polyethylene insulation.
 *
 * <p>Diameters by the American wire gauge; mutual capacitance 83 nF per mile for every gauge, as the plant is designed;
 * velocity 66 % at radio frequency; twist takes up 2 %. Impedance (98 ohm), spacing and effective permittivity follow.
 * Resistance and skin effect from first principles, with the proximity of the pair's other wire and the eddy currents in the
 * wires of the pairs around it ({@link PairBundle}): without these, loss is 10 to 16 % too low from 1 MHz up.
 *
 * <p>Pairs stand 1.8 spacings apart. A published table of such a cable (wire 0.5 mm, 0.9 mm over the insulation, 200 pairs
 * within 28.8 mm over a sheath of at least 1.7 mm) leaves 2.4 mm² to a pair, which is 1.85 spacings on a hexagonal lattice,
 * and somewhat less within a unit.
 */
final class TelephonePairTypes {

    private static final double METRES_PER_MILE = 1609.344;
    private static final double CAPACITANCE = 83e-9 / METRES_PER_MILE;
    private static final double VELOCITY = 0.66;
    private static final double TAKE_UP = 1.02;
    private static final double LOSS_TANGENT = 5e-4;
    private static final double POLYETHYLENE = 2.3;
    private static final double PITCH_OVER_SPACING = 1.8;
    private static final int PAIRS = 100;

    /** dB per 1000 ft in dB/km. */
    private static final double PER_KILOFOOT = 1 / 0.3048;

    private TelephonePairTypes() {}

    static List<CableType> all() {
        return List.of(
                type("19", 0.9116199e-3, List.of(point(0.196, 1.535 * PER_KILOFOOT), point(0.256, 5.6))),
                type("22", 0.6438033e-3, List.of(point(0.196, 2.177 * PER_KILOFOOT), point(0.256, 8.1))),
                type(
                        "24",
                        0.5105592e-3,
                        List.of(
                                point(0.1, 7.5133624),
                                point(0.196, 2.841 * PER_KILOFOOT),
                                point(0.256, 10.2),
                                point(1, 20.388612),
                                point(10, 67.458688))),
                type(
                        "26",
                        0.4048919e-3,
                        List.of(
                                point(0.1, 10.771298),
                                point(0.196, 3.880 * PER_KILOFOOT),
                                point(0.256, 13.7),
                                point(1, 25.404895),
                                point(10, 85.313742))));
    }

    private static AttenuationPoint point(double megahertz, double decibelPerKilometre) {
        return new AttenuationPoint(megahertz * 1e6, decibelPerKilometre / 1000);
    }

    private static CableType type(String gauge, double diameter, List<AttenuationPoint> attenuation) {
        double impedance = 1 / (VELOCITY * PhysicalConstants.LIGHT_METRES_PER_SECOND * CAPACITANCE);
        double root = 1 / (VELOCITY * TAKE_UP);
        double spacing = diameter * Math.cosh(Math.PI * impedance * root / PhysicalConstants.ETA_0);
        PairSection section = PairSection.solid(
                        diameter,
                        spacing,
                        spacing,
                        TAKE_UP,
                        Conductor.COPPER,
                        new ConstantLossTangent(root * root, LOSS_TANGENT, 1e8),
                        POLYETHYLENE)
                .among(new PairBundle(PAIRS, PITCH_OVER_SPACING * spacing));
        return new CableType(
                "pair-" + gauge,
                "Telephone pair " + gauge + " AWG, polyethylene, 83 nF per mile",
                CableFamily.TELEPHONE_PAIR,
                section,
                "Diameter ASTM B258 and 83 nF per mile (from memory); attenuation at 196 and 256 kHz of published loop"
                        + " engineering tables (70 °F), at other frequencies of the loop models of T. Starr, J. Cioffi,"
                        + " P. Silverman, Understanding DSL Technology (second-hand), which stand for somewhat warmer cable;"
                        + " eddy currents in neighbouring pairs 1.8 spacings away, derived.",
                impedance,
                VELOCITY,
                attenuation);
    }
}

package cablewright.simulator.line;

import cablewright.simulator.crosssection.AttenuationPoint;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.PhysicalConstants;
import java.util.List;

/**
 * Outside-plant telephone pairs with polyethylene insulation.
 *
 * <p>Diameters by the American wire gauge; mutual capacitance 83 nF per mile for every gauge, as the plant is designed;
 * velocity 66 % at radio frequency; twist takes up 2 %. Impedance (98 ohm), spacing and effective permittivity follow.
 * Resistance and skin effect with proximity from first principles.
 */
final class TelephonePairTypes {

    private static final double METRES_PER_MILE = 1609.344;
    private static final double CAPACITANCE = 83e-9 / METRES_PER_MILE;
    private static final double VELOCITY = 0.66;
    private static final double TAKE_UP = 1.02;
    private static final double LOSS_TANGENT = 5e-4;
    private static final double POLYETHYLENE = 2.3;

    private TelephonePairTypes() {}

    static List<CableType> all() {
        return List.of(
                type("19", 0.9116199e-3, List.of()),
                type("22", 0.6438033e-3, List.of()),
                type("24", 0.5105592e-3, List.of(point(0.1, 7.5133624), point(1, 20.388612), point(10, 67.458688))),
                type("26", 0.4048919e-3, List.of(point(0.1, 10.771298), point(1, 25.404895), point(10, 85.313742))));
    }

    private static AttenuationPoint point(double megahertz, double decibelPerKilometre) {
        return new AttenuationPoint(megahertz * 1e6, decibelPerKilometre / 1000);
    }

    private static CableType type(String gauge, double diameter, List<AttenuationPoint> attenuation) {
        double impedance = 1 / (VELOCITY * PhysicalConstants.SPEED_OF_LIGHT * CAPACITANCE);
        double root = 1 / (VELOCITY * TAKE_UP);
        double spacing = diameter * Math.cosh(Math.PI * impedance * root / PhysicalConstants.ETA_0);
        PairSection section = PairSection.solid(
                diameter,
                spacing,
                spacing,
                TAKE_UP,
                Conductor.COPPER,
                new ConstantLossTangent(root * root, LOSS_TANGENT, 1e8),
                POLYETHYLENE);
        return new CableType(
                "pair-" + gauge,
                "Telephone pair " + gauge + " AWG, polyethylene, 83 nF per mile",
                CableFamily.TELEPHONE_PAIR,
                section,
                "Diameter ASTM B258 and 83 nF per mile (from memory); attenuation, where given, of the loop models of"
                        + " T. Starr, J. Cioffi, P. Silverman, Understanding DSL Technology (second-hand), which stand for"
                        + " somewhat warmer cable.",
                impedance,
                VELOCITY,
                attenuation);
    }
}

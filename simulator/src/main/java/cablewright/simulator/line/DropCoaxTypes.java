package cablewright.simulator.line;

import cablewright.simulator.crosssection.CladWire;
import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.TubeShield;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/**
 * Foam drop coax: copper-clad steel centre, gas-injected polyethylene of 85 % velocity, foil and braid of aluminium.
 *
 * <p>The centre is 21 % conductive by section (steel 5.8e6 S/m, mu_r 100, copper skin 3 to 3.2 % of the diameter): an
 * assumption that meets the published DC resistance of a series-6 centre, 28 to 30 ohm per 1000 ft. Foil and braid are
 * one tube of aluminium. The outer diameter is set for 75 ohm exactly.
 */
final class DropCoaxTypes {

    private static final double SHAPE_75_OHM_AT_85_PERCENT = 4.35622694;

    private DropCoaxTypes() {}

    static List<CableType> all() {
        return List.of(
                foam("59", 0.8128e-3, 4.0e-2, List.of(0.86, 2.05, 3.80, 5.10, 6.97, 8.12)),
                foam("6", 1.02362e-3, 3.1e-2, List.of(0.58, 1.60, 3.05, 4.15, 5.65, 6.55)),
                foam("11", 1.62814e-3, 2.4e-2, List.of(0.38, 0.96, 1.90, 2.60, 3.65, 4.35)));
    }

    private static CableType foam(String series, double core, double skinShare, List<Double> decibelPerHundredFeet) {
        double outer = core * SHAPE_75_OHM_AT_85_PERCENT;
        CladWire wire = new CladWire(0.5 * core * (1 - 2 * skinShare), 0.5 * core, Conductor.STEEL, Conductor.COPPER);
        TubeShield shield = new TubeShield(0.5 * outer, 0.1e-3, Conductor.ALUMINIUM);
        CoaxSection section =
                CoaxSection.of(wire, core, shield, outer, new ConstantLossTangent(1.384083045, 2e-4, 1e8));
        return new CableType(
                "drop-" + series + "-foam",
                "Drop coax series " + series + ", foam, copper-clad steel centre",
                CableFamily.COAX_DROP,
                section,
                "Maximum attenuation at 20 degrees Celsius as in ANSI/SCTE 74 (from memory); cross-section from first"
                        + " principles: copper-clad steel, foam of 85 % velocity, aluminium shield.",
                75,
                0.85,
                Points.perHundredFeet(List.of(5.0, 55.0, 211.0, 400.0, 750.0, 1000.0), decibelPerHundredFeet));
    }
}

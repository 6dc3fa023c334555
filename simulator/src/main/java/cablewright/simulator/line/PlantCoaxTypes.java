package cablewright.simulator.line;

import cablewright.simulator.crosssection.CladWire;
import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.TubeShield;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/** Hardline of the cable plant: copper-clad aluminium centre, foam of 87 % velocity, seamless aluminium tube. */
final class PlantCoaxTypes {

    private static final double VELOCITY = 0.87;
    /** D/d of 75 ohm at 87 % velocity: exp(75/(59.9584916 x 0.87)). */
    private static final double SHAPE = Math.exp(75 / (59.9584915921 * VELOCITY));

    private PlantCoaxTypes() {}

    static List<CableType> all() {
        return List.of(hardline("500", 2.77e-3, 0.6e-3, List.of(0.16, 0.54, 1.09, 1.53, 2.16, 2.52)));
    }

    private static CableType hardline(String size, double core, double wall, List<Double> decibelPerHundredFeet) {
        double outer = core * SHAPE;
        CladWire wire = new CladWire(0.5 * core * 0.95, 0.5 * core, Conductor.ALUMINIUM, Conductor.COPPER);
        TubeShield shield = new TubeShield(0.5 * outer, wall, Conductor.ALUMINIUM);
        CoaxSection section = CoaxSection.of(
                wire, core, shield, outer, new ConstantLossTangent(1 / (VELOCITY * VELOCITY), 1e-4, 1e8));
        return new CableType(
                "hardline-" + size,
                "Hardline ." + size + " inch, foam, seamless aluminium",
                CableFamily.COAX_PLANT,
                section,
                "Maximum attenuation at 20 degrees Celsius as in ANSI/SCTE 15 (from memory); cross-section from first"
                        + " principles: copper-clad aluminium, foam of 87 % velocity, aluminium tube.",
                75,
                VELOCITY,
                Points.perHundredFeet(List.of(5.0, 55.0, 211.0, 400.0, 750.0, 1000.0), decibelPerHundredFeet));
    }
}

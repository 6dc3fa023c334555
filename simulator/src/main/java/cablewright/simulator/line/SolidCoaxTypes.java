package cablewright.simulator.line;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/** Coax with solid polyethylene as in MIL-DTL-17: velocity 65.9 %, copper core, braid. */
final class SolidCoaxTypes {

    private SolidCoaxTypes() {}

    static List<CableType> all() {
        return List.of(solid());
    }

    private static CableType solid() {
        double core = 2.26e-3;
        double outer = core * Math.exp(50 / (59.9584915921 * 0.659));
        CoaxSection section = CoaxSection.solid(
                core,
                outer,
                Conductor.COPPER,
                0.2e-3,
                Conductor.COPPER.withConductivityFactor(0.3),
                new ConstantLossTangent(1 / (0.659 * 0.659), 3e-4, 1e8));
        return new CableType(
                "coax-213-solid",
                "Coax 213, solid polyethylene",
                CableFamily.COAX_SOLID,
                section,
                "Nominal attenuation as in MIL-DTL-17 (from memory).",
                50,
                0.659,
                Points.perHundredFeet(List.of(100.0, 400.0, 1000.0), List.of(2.1, 4.5, 8.0)));
    }
}

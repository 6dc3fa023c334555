package cablewright.simulator.line;

import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.List;

/** Telephone and data pairs. */
final class PairTypes {

    private PairTypes() {}

    static List<CableType> all() {
        return List.of(telephone24(), category5e());
    }

    private static CableType telephone24() {
        PairSection section = PairSection.solid(
                0.5106e-3, 0.92e-3, 0.92e-3, 1.02, Conductor.COPPER, new ConstantLossTangent(2.0, 5e-4, 1e8), 2.3);
        return new CableType(
                "pair-24",
                "Telephone pair 24 AWG, polyethylene",
                CableFamily.TELEPHONE_PAIR,
                section,
                "AWG diameters as in ASTM B258 (from memory).",
                100,
                0.67,
                List.of());
    }

    private static CableType category5e() {
        PairSection section = PairSection.solid(
                0.511e-3, 0.932e-3, 0.932e-3, 1.02, Conductor.COPPER, new ConstantLossTangent(2.1, 5e-4, 1e8), 2.3);
        return new CableType(
                "cat-5e",
                "Category 5e pair, solid 24 AWG",
                CableFamily.DATA_PAIR,
                section,
                "Insertion loss limit of TIA-568 category 5e horizontal cable.",
                100,
                0.68,
                Points.perHundredMetres(List.of(1.0, 10.0, 100.0), List.of(2.04, 6.466, 21.975)));
    }
}

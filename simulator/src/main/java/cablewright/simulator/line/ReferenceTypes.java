package cablewright.simulator.line;

import cablewright.simulator.crosssection.ConstantsSection;
import java.util.List;

/** Lines for reference. */
final class ReferenceTypes {

    private ReferenceTypes() {}

    static List<CableType> all() {
        return List.of(new CableType(
                "lossless-75",
                "Line without loss, 75 ohm, 85 %",
                CableFamily.REFERENCE,
                ConstantsSection.lossless(75, 0.85),
                "Definition: z = s L, y = s C.",
                75,
                0.85,
                List.of()));
    }
}

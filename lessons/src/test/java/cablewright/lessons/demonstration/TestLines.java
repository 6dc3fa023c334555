// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import java.util.List;

/** Cable types made for the tests of the demonstrations. */
final class TestLines {

    private TestLines() {}

    static CableType type(CrossSection section) {
        return new CableType(
                "test-line",
                "Line of a test",
                CableFamily.REFERENCE,
                section,
                "made for a test",
                section.impedanceOhms(),
                Math.min(1, section.velocityFraction()),
                List.of());
    }

    static CableType lossless(double ohms, double metresPerSecond) {
        return type(ConstantsSection.lossless(ohms, metresPerSecond / 299_792_458.0));
    }
}

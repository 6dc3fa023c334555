// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.ReferenceTable;
import org.junit.jupiter.api.Test;

/** Against values of 60 digits; the file tells their origin. */
class RoundBesselReferenceTest {

    private static final double TOLERANCE = 2e-13;

    @Test
    void everyCombinationIsRightFromDcToFarBeyondTenGigahertz() {
        RoundBessel bessel = new RoundBessel();
        for (double[] row : ReferenceTable.rows("round-bessel.csv")) {
            double size = Math.hypot(row[0], row[1]);
            bessel.half(0.25 * (row[0] * row[0] - row[1] * row[1]), 0.5 * row[0] * row[1]);
            assertClose(row, 2, bessel.halfRe, bessel.halfIm, TOLERANCE);
            bessel.all(row[0], row[1]);
            assertClose(row, 4, bessel.qRe, bessel.qIm, TOLERANCE);
            assertClose(row, 6, bessel.wRe, bessel.wIm, TOLERANCE * Math.max(1, 0.2 * size));
            double pRe = 2 * (row[2] * row[0] + row[3] * row[1]) / (size * size);
            assertEquals(pRe, bessel.pRe, TOLERANCE * Math.hypot(bessel.pRe, bessel.pIm));
            bessel.decayRatio(row[0], row[1]);
            assertClose(row, 4, bessel.qRe, bessel.qIm, TOLERANCE);
        }
    }

    private static void assertClose(double[] row, int at, double re, double im, double tolerance) {
        double error = Math.hypot(re - row[at], im - row[at + 1]) / Math.hypot(row[at], row[at + 1]);
        assertTrue(error < tolerance, () -> "column " + at + " at z = " + row[0] + " + j " + row[1] + ": " + error);
    }
}

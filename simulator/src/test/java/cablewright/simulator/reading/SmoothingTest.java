// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SmoothingTest {

    /** Savitzky & Golay, Anal. Chem. 36, 1627 (1964), table I: quadratic and cubic, 5, 7 and 9 points (from memory). */
    @Test
    void weightsMatchTheTableOfSavitzkyAndGolay() {
        assertWeights(new Smoothing(2, 2), 35, -3, 12, 17, 12, -3);
        assertWeights(new Smoothing(2, 3), 35, -3, 12, 17, 12, -3);
        assertWeights(new Smoothing(3, 2), 21, -2, 3, 6, 7, 6, 3, -2);
        assertWeights(new Smoothing(4, 3), 231, -21, 14, 39, 54, 59, 54, 39, 14, -21);
        assertWeights(new Smoothing(3, 4), 231, 5, -30, 75, 131, 75, -30, 5);
    }

    private static void assertWeights(Smoothing smoothing, double norm, double... numerators) {
        double[] expected = numerators.clone();
        for (int i = 0; i < expected.length; i++) {
            expected[i] /= norm;
        }
        assertArrayEquals(expected, smoothing.weights(), 1e-14);
    }

    @Property(tries = 200)
    void symmetricalPeakKeepsItsPlace(
            @ForAll @IntRange(min = 1, max = 30) int half,
            @ForAll @IntRange(min = 0, max = 4) int degree,
            @ForAll @DoubleRange(min = 2, max = 40) double width) {
        Smoothing smoothing = new Smoothing(half, Math.min(degree, 2 * half));
        double[] values = new double[401];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.exp(-Math.pow((i - 200) / width, 2));
        }
        double[] smooth = smoothing.smooth(values);
        for (int i = 1; i <= 200; i++) {
            assertEquals(smooth[200 - i], smooth[200 + i], 1e-12);
        }
        if (width > half) {
            for (double other : smooth) {
                assertTrue(other <= smooth[200] + 1e-12);
            }
        }
    }

    @Property(tries = 200)
    void polynomialOfTheDegreePassesUnchangedUpToTheEnds(
            @ForAll @IntRange(min = 2, max = 30) int half, @ForAll @IntRange(min = 0, max = 4) int degree) {
        double[] values = new double[100];
        for (int i = 0; i < values.length; i++) {
            values[i] = 1 + Math.pow((i - 30) / 50.0, degree);
        }
        assertArrayEquals(values, new Smoothing(half, degree).smooth(values), 1e-9);
    }

    @Test
    void whiteNoiseIsLoweredAsStated() {
        SplittableRandom random = new SplittableRandom(3);
        double[] noise =
                random.doubles(200_000).map(u -> Math.sqrt(12) * (u - 0.5)).toArray();
        Smoothing smoothing = new Smoothing(7, 2);
        double sum = 0;
        for (double v : smoothing.smooth(noise)) {
            sum += v * v;
        }
        assertEquals(smoothing.noiseShare(), Math.sqrt(sum / noise.length), 0.01 * smoothing.noiseShare());
    }

    @Test
    void windowLongerThanTheRecordIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Smoothing(5, 2).smooth(new double[10]));
        assertThrows(IllegalArgumentException.class, () -> new Smoothing(1, 3));
    }
}

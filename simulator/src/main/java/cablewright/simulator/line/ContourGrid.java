// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.PowerOfTwo;
import cablewright.simulator.check.Require;
import java.util.Arrays;

/**
 * A grid of complex frequencies on a damped contour: s_k = c + jkΔω for k = 0 … n/2, where n is the number of time
 * samples that belong to it.
 *
 * <p>A function of time that is known on the contour is known from 0 to the period T = 2π/Δω; what comes after the period
 * folds back smaller by e^(−cT). The samples are T/n apart, and the top of the band is π n/T. Source of the method:
 * Moreno &amp; Ramirez, Implementation of the Numerical Laplace Transform: A Review, IEEE Trans. Power Delivery 23(4),
 * 2599–2609 (2008).
 *
 * @param dampingPerSecond c, the real part of every frequency [1/s], above 0
 * @param periodSeconds T [s], above 0
 * @param samples n, a power of two from 16 to {@value #MOST_SAMPLES}
 */
public record ContourGrid(
        @Above(floor = 0, most = 1e15) double dampingPerSecond,
        @Above(floor = 0, most = 1e6) double periodSeconds,
        @PowerOfTwo(least = 16, most = ContourGrid.MOST_SAMPLES) int samples) {

    /** Most time samples in a grid. */
    public static final int MOST_SAMPLES = 1 << 22;

    /**
     * c·T of the grids made here. What folds back is e^−24 = 4e-11 of itself, and the rounding errors that e^(ct)
     * raises stay below 1e-10 in the first half of the period, which is all that is shown of it.
     */
    public static final double DAMPING_TIMES_PERIOD = 24;

    /** Checks the ranges. */
    public ContourGrid {
        Require.components(ContourGrid.class, dampingPerSecond, periodSeconds, samples);
    }

    /**
     * Makes the grid for a record: a period of at least twice the record, and samples no further apart than asked.
     *
     * @param recordSeconds length of the record that is wanted [s]
     * @param longestSampleSeconds largest distance of samples that serves [s]
     * @return the smallest grid that has both
     * @throws IllegalArgumentException if that takes more than {@value #MOST_SAMPLES} samples
     */
    public static ContourGrid forRecord(double recordSeconds, double longestSampleSeconds) {
        double least = 2 * recordSeconds / longestSampleSeconds;
        if (!(least <= MOST_SAMPLES)) {
            throw new IllegalArgumentException("a record of " + recordSeconds + " s in steps of " + longestSampleSeconds
                    + " s takes more than " + MOST_SAMPLES + " samples; choose a shorter range or a wider pulse");
        }
        int samples = Math.max(16, Integer.highestOneBit(Math.max(1, (int) Math.ceil(least) - 1)) << 1);
        double period = 2 * recordSeconds;
        return new ContourGrid(DAMPING_TIMES_PERIOD / period, period, samples);
    }

    /**
     * Returns the number of frequencies.
     *
     * @return n/2 + 1
     */
    public int frequencies() {
        return samples / 2 + 1;
    }

    /**
     * Returns the distance of frequencies.
     *
     * @return Δω [rad/s]
     */
    public double spacingRadiansPerSecond() {
        return 2 * Math.PI / periodSeconds;
    }

    /**
     * Returns the distance of time samples.
     *
     * @return T/n [s]
     */
    public double sampleSeconds() {
        return periodSeconds / samples;
    }

    /**
     * Returns the highest frequency.
     *
     * @return n/(2T) [Hz]
     */
    public double topHertz() {
        return samples / (2 * periodSeconds);
    }

    /**
     * Returns the frequencies themselves.
     *
     * @return a fresh copy
     */
    public Frequencies points() {
        double[] real = new double[frequencies()];
        double[] imaginary = new double[frequencies()];
        Arrays.fill(real, dampingPerSecond);
        for (int k = 0; k < imaginary.length; k++) {
            imaginary[k] = k * spacingRadiansPerSecond();
        }
        return new Frequencies(real, imaginary);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import java.util.Arrays;

/**
 * Estimates the noise of a record from the record alone.
 *
 * <p>σ = median |xᵢ₋₁ − 2xᵢ + xᵢ₊₁|/(0.6745 √6): the second difference leaves little of echoes that have several samples on
 * an edge, white noise of σ leaves it with √6 σ, and half of |N(0, 1)| lies below 0.6745. Noise that is alike from sample to
 * sample, as a narrow receiver makes it, is estimated too small.
 */
public final class NoiseLevel {

    private static final double MEDIAN = 0.6745;

    private NoiseLevel() {}

    /**
     * Estimates the noise.
     *
     * @param values evenly spaced samples
     * @return root mean square of white noise in them, in their unit; 0 for fewer than three samples
     */
    public static double volts(double[] values) {
        if (values.length < 3) {
            return 0;
        }
        double[] bends = new double[values.length - 2];
        for (int i = 0; i < bends.length; i++) {
            bends[i] = Math.abs(values[i] - 2 * values[i + 1] + values[i + 2]);
        }
        Arrays.sort(bends);
        return bends[bends.length / 2] / MEDIAN / Math.sqrt(6);
    }
}

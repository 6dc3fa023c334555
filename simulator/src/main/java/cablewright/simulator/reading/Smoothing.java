// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.wave.Waveform;

/**
 * Smoothing that does not move events: each sample is replaced by the value there of the polynomial that fits its
 * neighbours best.
 *
 * <p>The weights are symmetrical, so that the filter has no delay at any frequency and a symmetrical peak keeps its place;
 * a trace that is a polynomial of the degree or lower passes unchanged, so that edges and peaks wider than the window keep
 * their height. White noise is lowered to √Σw² of itself. Near the ends of the record the same fit is read off centre.
 * Source: Savitzky &amp; Golay, Smoothing and differentiation of data by simplified least squares procedures, Anal. Chem.
 * 36, 1627–1639 (1964).
 *
 * @param halfSamples samples on either side that take part, 1 to {@value #MOST_HALF_SAMPLES}
 * @param degree degree of the polynomial, 0 to {@value #HIGHEST_DEGREE}, below the number of samples in the window
 */
public record Smoothing(@Between(least = 1, most = Smoothing.MOST_HALF_SAMPLES) int halfSamples, int degree) {

    /** Widest window, to one side. */
    public static final int MOST_HALF_SAMPLES = 1000;

    /** Highest degree. */
    public static final int HIGHEST_DEGREE = 8;

    /** Checks the ranges. */
    public Smoothing {
        Require.components(Smoothing.class, halfSamples, degree);
        Require.between("degree", degree, 0, Math.min(HIGHEST_DEGREE, 2.0 * halfSamples));
    }

    /**
     * Smooths a trace.
     *
     * @param trace the trace
     * @return a trace alike but smoothed; its noise is reduced by what smoothing takes of white noise
     */
    public Trace smooth(Trace trace) {
        return new Trace(
                trace.settings(),
                new Waveform(trace.sampleSeconds(), smooth(trace.copyOfVolts())),
                trace.zeroSeconds(),
                trace.noiseVolts() * noiseShare(),
                trace.clipVolts(),
                trace.stepVolts());
    }

    /**
     * Smooths evenly spaced values.
     *
     * @param values the values, at least as many as the window has
     * @return as many smoothed values
     */
    public double[] smooth(double[] values) {
        int width = 2 * halfSamples + 1;
        if (values.length < width) {
            throw new IllegalArgumentException("values has " + values.length + " entries; a window of " + width
                    + " needs at least as many: choose a smaller one");
        }
        double[][] basis = basis();
        double[] middle = weights(basis, halfSamples);
        double[] smoothed = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int start = Math.max(0, Math.min(values.length - width, i - halfSamples));
            double[] weights = i - start == halfSamples ? middle : weights(basis, i - start);
            double sum = 0;
            for (int j = 0; j < width; j++) {
                sum += weights[j] * values[start + j];
            }
            smoothed[i] = sum;
        }
        return smoothed;
    }

    /**
     * Returns the weights of the samples around the one that is replaced.
     *
     * @return 2·halfSamples + 1 weights, symmetrical, of sum 1
     */
    public double[] weights() {
        return weights(basis(), halfSamples);
    }

    /**
     * Returns what is left of white noise.
     *
     * @return √Σw²
     */
    public double noiseShare() {
        double sum = 0;
        for (double weight : weights()) {
            sum += weight * weight;
        }
        return Math.sqrt(sum);
    }

    /** Polynomials of degree 0 up to the highest, orthonormal on the samples of the window. */
    private double[][] basis() {
        int width = 2 * halfSamples + 1;
        double[][] basis = new double[degree + 1][width];
        for (int d = 0; d <= degree; d++) {
            for (int j = 0; j < width; j++) {
                double x = (double) (j - halfSamples) / halfSamples;
                basis[d][j] = d == 0 ? 1 : x * basis[d - 1][j];
            }
            // Twice, so that rounding leaves nothing of the lower ones.
            removeLower(basis, d);
            removeLower(basis, d);
        }
        return basis;
    }

    private static void removeLower(double[][] basis, int d) {
        for (int lower = 0; lower < d; lower++) {
            double along = dot(basis[d], basis[lower]);
            for (int j = 0; j < basis[d].length; j++) {
                basis[d][j] -= along * basis[lower][j];
            }
        }
        double size = Math.sqrt(dot(basis[d], basis[d]));
        for (int j = 0; j < basis[d].length; j++) {
            basis[d][j] /= size;
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int j = 0; j < a.length; j++) {
            sum += a[j] * b[j];
        }
        return sum;
    }

    private static double[] weights(double[][] basis, int place) {
        double[] weights = new double[basis[0].length];
        for (double[] polynomial : basis) {
            for (int j = 0; j < weights.length; j++) {
                weights[j] += polynomial[place] * polynomial[j];
            }
        }
        return weights;
    }
}

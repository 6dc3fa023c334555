// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Values at the corners of a wave. The inversion's taper rounds a corner over a few samples, and at the corner itself misses
 * it by up to a sixth of the change of slope in one sample; away from it the error falls with the cube of the distance.
 *
 * <p>So where the wave to the left and to the right of a sample, each as a cubic through the {@value #POINTS} samples from
 * {@value #GUARD} off, does not agree on the value there, a corner lies between. It is where the two cubics meet, and the
 * value is that of the cubic on whose side the sample is. That holds only for corners, so anything that does not look like
 * one (a cubic that misses its own samples, cubics that do not meet nearby, a correction larger than a corner of that slope
 * can need) is left as it was.
 */
final class Corners {

    /** Finest structure that cubics of this length follow: samples across the shortest edge. */
    static final int LEAST_SAMPLES_PER_EDGE = 500;

    private static final int GUARD = 8;
    private static final int POINTS = 17;
    private static final double SAME = 1e-7;
    private static final double MOST_OF_SLOPE = 0.25;

    private final Waveform wave;
    private final double[][] fit = fit();
    private final double[] left = new double[4];
    private final double[] right = new double[4];

    Corners(Waveform wave) {
        this.wave = wave;
    }

    /** For each coefficient of the cubic, by rising power, what each sample at GUARD, GUARD + 1 … adds: least squares. */
    private static double[][] fit() {
        DMatrixRMaj powers = new DMatrixRMaj(POINTS, 4);
        for (int i = 0; i < POINTS; i++) {
            double x = GUARD + i;
            for (int p = 0; p < 4; p++) {
                powers.set(i, p, Math.pow(x, p));
            }
        }
        DMatrixRMaj inverse = new DMatrixRMaj(4, POINTS);
        CommonOps_DDRM.pinv(powers, inverse);
        double[][] fit = new double[4][POINTS];
        for (int p = 0; p < 4; p++) {
            for (int i = 0; i < POINTS; i++) {
                fit[p][i] = inverse.get(p, i);
            }
        }
        return fit;
    }

    /** The value at a sample. */
    double at(int index) {
        double raw = wave.sample(index);
        int reach = GUARD + POINTS;
        if (index < reach || index + reach >= wave.count()) {
            return raw;
        }
        double missed = Math.max(fill(left, index, -1), fill(right, index, 1));
        double apart = Math.max(Math.abs(left[0] - raw), Math.abs(right[0] - raw));
        if (apart < SAME || missed > 0.02 * apart) {
            return raw;
        }
        double corner = meeting();
        if (Double.isNaN(corner)) {
            return raw;
        }
        double value = corner > 0 ? left[0] : right[0];
        double slope = Math.abs(right[1] - left[1]);
        return Math.abs(value - raw) <= MOST_OF_SLOPE * slope ? value : raw;
    }

    /** Lays the cubic on one side; returns by how much it misses its samples at most. */
    private double fill(double[] cubic, int index, int side) {
        for (int p = 0; p < 4; p++) {
            double sum = 0;
            for (int i = 0; i < POINTS; i++) {
                sum += fit[p][i] * wave.sample(index + side * (GUARD + i));
            }
            cubic[p] = side < 0 && p % 2 == 1 ? -sum : sum;
        }
        double missed = 0;
        for (int i = 0; i < POINTS; i++) {
            double x = side * (GUARD + i);
            double value = cubic[0] + x * (cubic[1] + x * (cubic[2] + x * cubic[3]));
            missed = Math.max(missed, Math.abs(value - wave.sample(index + side * (GUARD + i))));
        }
        return missed;
    }

    /** Where the cubics meet, in samples, by Newton's rule from the middle; NaN if not between the two. */
    private double meeting() {
        double a = left[0] - right[0];
        double b = left[1] - right[1];
        double c = left[2] - right[2];
        double d = left[3] - right[3];
        double x = 0;
        for (int i = 0; i < 20; i++) {
            x -= (a + x * (b + x * (c + x * d))) / (b + x * (2 * c + x * 3 * d));
        }
        return Math.abs(x) <= GUARD ? x : Double.NaN;
    }
}

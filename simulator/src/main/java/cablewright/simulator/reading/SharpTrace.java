// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.FourierTransform;
import cablewright.simulator.wave.Stimulus;

/**
 * A trace as a short symmetrical pulse would have made it: the stimulus is divided out and a Gaussian put in its place, so
 * that an echo has no trailing edge that could be taken for another.
 *
 * <p>W = Q* G/(|Q|² + ε max|Q|²), Q the spectrum of the stimulus (of its slope for a step), G that of the Gaussian: the
 * Wiener filter for white noise (Wiener, Extrapolation, Interpolation, and Smoothing of Stationary Time Series, 1949, from
 * memory). A place that reflects ρ at all frequencies shows as a Gaussian of height ρ where the echo's leading edge is at
 * half height.
 */
final class SharpTrace {

    /** Half-height width of the Gaussian over that of the pulse; a step's edge is already about one. */
    private static final double PULSE_SHARE = 0.75;

    private static final double STEP_SHARE = 1;
    private static final double REGULAR = 0.003;
    private static final double DAMPING = 1e-3;
    private static final double SIGMAS_PER_WIDTH = 2.3548200450309493;

    private final double sampleSeconds;
    private final int count;
    private final double sigmaSeconds;
    private final FourierTransform transform;
    private final ComplexArray filter;
    private final ComplexArray spectrum;

    SharpTrace(double[] volts, double sampleSeconds, Stimulus stimulus) {
        this.sampleSeconds = sampleSeconds;
        this.count = volts.length;
        this.sigmaSeconds =
                (stimulus.isStep() ? STEP_SHARE : PULSE_SHARE) * stimulus.resolutionSeconds() / SIGMAS_PER_WIDTH;
        int size = Integer.highestOneBit(Math.max(1, 2 * count - 1)) << 1;
        this.transform = FourierTransform.ofLength(size);
        this.filter = filter(size, stimulus);
        this.spectrum = transform.spectrum(padded(volts, size)).times(filter);
    }

    /** Carries the record on to its period without a jump. */
    private static double[] padded(double[] volts, int size) {
        double[] padded = new double[size];
        double last = volts[volts.length - 1];
        for (int i = 0; i < size; i++) {
            double share = (double) (i - volts.length + 1) / (size - volts.length + 1);
            padded[i] = i < volts.length ? volts[i] : last + share * (volts[0] - last);
        }
        return padded;
    }

    private ComplexArray filter(int size, Stimulus stimulus) {
        int half = size / 2;
        double[][] sent = new double[2][half + 1];
        double damping = DAMPING / stimulus.resolutionSeconds();
        double[] out = new double[2];
        double most = 0;
        for (int k = 0; k <= half; k++) {
            double w = omega(k, size);
            stimulus.transform(damping, w, out);
            double re = stimulus.isStep() ? out[0] * damping - out[1] * w : out[0];
            double im = stimulus.isStep() ? out[0] * w + out[1] * damping : out[1];
            double turn = w * stimulus.halfHeightSeconds();
            sent[0][k] = re * Math.cos(turn) - im * Math.sin(turn);
            sent[1][k] = re * Math.sin(turn) + im * Math.cos(turn);
            most = Math.max(most, re * re + im * im);
        }
        double[] filterRe = new double[half + 1];
        double[] filterIm = new double[half + 1];
        for (int k = 0; k <= half; k++) {
            double w = omega(k, size);
            double gauss = Math.exp(-w * w * sigmaSeconds * sigmaSeconds / 2) * sigmaSeconds * Math.sqrt(2 * Math.PI);
            double power = sent[0][k] * sent[0][k] + sent[1][k] * sent[1][k];
            double re = gauss * sent[0][k] / (power + REGULAR * most);
            double im = -gauss * sent[1][k] / (power + REGULAR * most);
            filterRe[k] = stimulus.isStep() ? re * damping - im * w : re;
            filterIm[k] = stimulus.isStep() ? re * w + im * damping : im;
        }
        filterIm[half] = 0;
        return ComplexArray.takingOver(filterRe, filterIm);
    }

    private double omega(int k, int size) {
        return 2 * Math.PI * k / (size * sampleSeconds);
    }

    int count() {
        return count;
    }

    double sigmaSeconds() {
        return sigmaSeconds;
    }

    /** Correlates the sharpened trace with a kernel that is centred on its middle. */
    double[] through(double[] kernel) {
        double[] values = new double[count];
        System.arraycopy(transform.realSamples(spectrum.times(mirrored(kernel))), 0, values, 0, count);
        return values;
    }

    private ComplexArray mirrored(double[] kernel) {
        double[] laid = new double[2 * (spectrum.count() - 1)];
        for (int j = 0; j < kernel.length; j++) {
            laid[Math.floorMod(kernel.length / 2 - j, laid.length)] += kernel[j];
        }
        return transform.spectrum(laid);
    }

    /** What white noise of 1 becomes, sharpened and correlated: its size, and its likeness at neighbouring samples. */
    double[] noise(double[] kernel) {
        ComplexArray product = filter.times(mirrored(kernel));
        double power = 0;
        double next = 0;
        int half = product.count() - 1;
        for (int k = 0; k <= half; k++) {
            int signs = k == 0 || k == half ? 1 : 2;
            double one = signs * (product.re(k) * product.re(k) + product.im(k) * product.im(k)) / (2 * half);
            power += one;
            next += one * Math.cos(Math.PI * k / half);
        }
        return new double[] {Math.sqrt(power), next / power};
    }

    /** What a kernel makes of a Gaussian of height 1, such as the outgoing wave would be. */
    double gain(double[] kernel) {
        double sum = 0;
        for (int j = 0; j < kernel.length; j++) {
            double x = (j - kernel.length / 2) * sampleSeconds / sigmaSeconds;
            sum += kernel[j] * Math.exp(-x * x / 2);
        }
        return sum;
    }
}

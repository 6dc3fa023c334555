// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexExp;

/**
 * A Gaussian pulse: f(t) = exp(−(t − t0)²/(2σ²)) with σ = w/(2√(2 ln 2)) and its middle at t0 = 8σ, so that at t = 0 it
 * is 1.3e-14, which counts as zero. F(s) = σ√(2π) exp((sσ)²/2 − s t0), on the contour exactly as written: with −(ωσ)²/2
 * in its place every edge would move by cσ².
 *
 * @param widthSeconds width at half height [s]
 */
public record GaussianPulse(@StimulusSeconds double widthSeconds) implements Stimulus {

    private static final double SIGMAS_BEFORE = 8;
    private static final double SIGMAS_PER_WIDTH = 2 * Math.sqrt(2 * Math.log(2));
    private static final double SIGMAS_PER_RISE = 2.5631031310892007;

    /** Refuses a width out of bounds. */
    public GaussianPulse {
        Require.components(GaussianPulse.class, widthSeconds);
    }

    private double sigma() {
        return widthSeconds / SIGMAS_PER_WIDTH;
    }

    @Override
    public double at(double seconds) {
        double u = seconds / sigma() - SIGMAS_BEFORE;
        return seconds <= 0 ? 0 : Math.exp(-u * u / 2);
    }

    @Override
    public void transform(double sRe, double sIm, double[] out) {
        double sigma = sigma();
        double re = (sRe * sRe - sIm * sIm) * sigma * sigma / 2 - sRe * SIGMAS_BEFORE * sigma;
        double im = sRe * sIm * sigma * sigma - sIm * SIGMAS_BEFORE * sigma;
        ComplexExp.exp(re, im, out);
        out[0] *= sigma * Math.sqrt(2 * Math.PI);
        out[1] *= sigma * Math.sqrt(2 * Math.PI);
    }

    @Override
    public double shortestEdgeSeconds() {
        return SIGMAS_PER_RISE * sigma();
    }

    @Override
    public double halfHeightSeconds() {
        return SIGMAS_BEFORE * sigma() - widthSeconds / 2;
    }

    @Override
    public double settledSeconds() {
        return 2 * SIGMAS_BEFORE * sigma();
    }

    @Override
    public double resolutionSeconds() {
        return widthSeconds;
    }
}

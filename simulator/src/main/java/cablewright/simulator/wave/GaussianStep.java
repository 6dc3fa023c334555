// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexExp;
import org.apache.commons.math3.special.Erf;

/**
 * A step with a Gaussian edge: f(t) = (1 + erf((t − t0)/(σ√2)))/2 with σ = r/2.5631 for a 10–90 % rise r, and its middle
 * at t0 = 8σ. F(s) = exp((sσ)²/2 − s t0)/s.
 *
 * @param riseSeconds rise from 10 to 90 % [s]
 */
public record GaussianStep(@StimulusSeconds double riseSeconds) implements Stimulus {

    private static final double SIGMAS_BEFORE = 8;
    private static final double SIGMAS_PER_RISE = 2.5631031310892007;

    /** Refuses a rise out of bounds. */
    public GaussianStep {
        Require.components(GaussianStep.class, riseSeconds);
    }

    private double sigma() {
        return riseSeconds / SIGMAS_PER_RISE;
    }

    @Override
    public double at(double seconds) {
        double u = (seconds / sigma() - SIGMAS_BEFORE) / Math.sqrt(2);
        return seconds <= 0 ? 0 : Erf.erfc(-u) / 2;
    }

    @Override
    public void transform(double sRe, double sIm, double[] out) {
        double sigma = sigma();
        double re = (sRe * sRe - sIm * sIm) * sigma * sigma / 2 - sRe * SIGMAS_BEFORE * sigma;
        double im = sRe * sIm * sigma * sigma - sIm * SIGMAS_BEFORE * sigma;
        ComplexExp.exp(re, im, out);
        ComplexExp.divide(out[0], out[1], sRe, sIm, out);
    }

    @Override
    public double shortestEdgeSeconds() {
        return riseSeconds;
    }

    @Override
    public double halfHeightSeconds() {
        return SIGMAS_BEFORE * sigma();
    }

    @Override
    public double settledSeconds() {
        return 2 * SIGMAS_BEFORE * sigma();
    }

    @Override
    public double widthSeconds() {
        return 0;
    }

    @Override
    public double resolutionSeconds() {
        return riseSeconds;
    }
}

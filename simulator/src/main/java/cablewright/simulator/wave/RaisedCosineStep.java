// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexExp;

/**
 * A step whose edge is half a period of a cosine: f(t) = (1 − cos(πt/τ))/2 from 0 to τ, then 1. Its 10–90 % rise is
 * τ (arccos(−0.8) − arccos(0.8))/π = 0.590334 τ. F(s) = (π²/2τ²)(1 + e^(−sτ))/(s (s² + (π/τ)²)).
 *
 * @param riseSeconds rise from 10 to 90 % [s]
 */
public record RaisedCosineStep(@StimulusSeconds double riseSeconds) implements Stimulus {

    private static final double RISE_SHARE = (Math.acos(-0.8) - Math.acos(0.8)) / Math.PI;

    /** Refuses a rise out of bounds. */
    public RaisedCosineStep {
        Require.components(RaisedCosineStep.class, riseSeconds);
    }

    /**
     * Returns how long the whole edge takes.
     *
     * @return τ [s]
     */
    public double edgeSeconds() {
        return riseSeconds / RISE_SHARE;
    }

    @Override
    public double at(double seconds) {
        double tau = edgeSeconds();
        if (seconds <= 0) {
            return 0;
        }
        return seconds >= tau ? 1 : 0.5 - 0.5 * Math.cos(Math.PI * seconds / tau);
    }

    @Override
    public void transform(double sRe, double sIm, double[] out) {
        double tau = edgeSeconds();
        double w = Math.PI / tau;
        ComplexExp.exp(-sRe * tau, -sIm * tau, out);
        double half = w * w / 2;
        double qRe = sRe * sRe - sIm * sIm + w * w;
        double qIm = 2 * sRe * sIm;
        ComplexExp.divide(half * (1 + out[0]), half * out[1], sRe * qRe - sIm * qIm, sRe * qIm + sIm * qRe, out);
    }

    @Override
    public double shortestEdgeSeconds() {
        return edgeSeconds();
    }

    @Override
    public double halfHeightSeconds() {
        return edgeSeconds() / 2;
    }

    @Override
    public double settledSeconds() {
        return edgeSeconds();
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

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexExp;

/**
 * Half a period of a sine: f(t) = sin(πt/D) from 0 to D = 3w/2, where w is the width at half height (the half heights lie
 * at D/6 and 5D/6). F(s) = (π/D)(1 + e^(−sD))/(s² + (π/D)²).
 *
 * @param widthSeconds width at half height [s]
 */
public record HalfSine(@StimulusSeconds double widthSeconds) implements Stimulus {

    /** Refuses a width out of bounds. */
    public HalfSine {
        Require.components(HalfSine.class, widthSeconds);
    }

    private double duration() {
        return 1.5 * widthSeconds;
    }

    @Override
    public double at(double seconds) {
        return seconds <= 0 || seconds >= duration() ? 0 : Math.sin(Math.PI * seconds / duration());
    }

    @Override
    public void transform(double sRe, double sIm, double[] out) {
        double w = Math.PI / duration();
        ComplexExp.exp(-sRe * duration(), -sIm * duration(), out);
        ComplexExp.divide(w * (1 + out[0]), w * out[1], sRe * sRe - sIm * sIm + w * w, 2 * sRe * sIm, out);
    }

    @Override
    public double shortestEdgeSeconds() {
        return duration() / 2;
    }

    @Override
    public double halfHeightSeconds() {
        return duration() / 6;
    }

    @Override
    public double settledSeconds() {
        return duration();
    }

    @Override
    public double resolutionSeconds() {
        return widthSeconds;
    }
}

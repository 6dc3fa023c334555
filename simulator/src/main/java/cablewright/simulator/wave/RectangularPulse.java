// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.check.Readable;
import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexExp;

/**
 * A rectangular pulse with raised-cosine edges: a {@link RaisedCosineStep} less the same step one width later, so the
 * width is taken at half height. F(s) = E(s)(1 − e^(−sw)).
 *
 * @param widthSeconds width at half height [s], at least the whole edge of the step
 * @param edgeSeconds rise of each edge from 10 to 90 % [s]
 */
public record RectangularPulse(@StimulusSeconds double widthSeconds, @StimulusSeconds double edgeSeconds)
        implements Stimulus {

    /** Refuses a width out of bounds and edges that would not reach the top. */
    public RectangularPulse {
        Require.components(RectangularPulse.class, widthSeconds, edgeSeconds);
        double whole = new RaisedCosineStep(edgeSeconds).edgeSeconds();
        if (whole > widthSeconds) {
            throw new IllegalArgumentException("edgeSeconds is " + Readable.number(edgeSeconds) + "; with a width of "
                    + Readable.number(widthSeconds) + " s it may be at most "
                    + Readable.number(edgeSeconds * widthSeconds / whole));
        }
    }

    private RaisedCosineStep edge() {
        return new RaisedCosineStep(edgeSeconds);
    }

    @Override
    public double at(double seconds) {
        return edge().at(seconds) - edge().at(seconds - widthSeconds);
    }

    @Override
    public void transform(double sRe, double sIm, double[] out) {
        edge().transform(sRe, sIm, out);
        double eRe = out[0];
        double eIm = out[1];
        ComplexExp.exp(-sRe * widthSeconds, -sIm * widthSeconds, out);
        double dRe = 1 - out[0];
        double dIm = -out[1];
        out[0] = eRe * dRe - eIm * dIm;
        out[1] = eRe * dIm + eIm * dRe;
    }

    @Override
    public double shortestEdgeSeconds() {
        return edge().edgeSeconds();
    }

    @Override
    public double halfHeightSeconds() {
        return edge().halfHeightSeconds();
    }

    @Override
    public double settledSeconds() {
        return widthSeconds + edge().edgeSeconds();
    }

    @Override
    public double resolutionSeconds() {
        return widthSeconds;
    }
}

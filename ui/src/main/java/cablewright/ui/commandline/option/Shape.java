// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.RectangularPulse;
import cablewright.simulator.wave.Stimulus;

/** The shapes of outgoing wave by the names that the command line gives them. */
public enum Shape {
    HALF_SINE("half-sine", true, false),
    RECTANGULAR("rectangular", true, false),
    RAISED_COSINE("raised-cosine", false, true),
    GAUSSIAN("gaussian", true, true);

    private final String word;
    private final boolean forPulse;
    private final boolean forStep;

    Shape(String word, boolean forPulse, boolean forStep) {
        this.word = word;
        this.forPulse = forPulse;
        this.forStep = forStep;
    }

    boolean forPulse() {
        return forPulse;
    }

    boolean forStep() {
        return forStep;
    }

    Stimulus pulse(double widthSeconds, double edgeSeconds) {
        return switch (this) {
            case HALF_SINE -> new HalfSine(widthSeconds);
            case RECTANGULAR -> new RectangularPulse(widthSeconds, edgeSeconds);
            case GAUSSIAN -> new GaussianPulse(widthSeconds);
            case RAISED_COSINE -> throw new IllegalStateException("no pulse has a raised-cosine shape");
        };
    }

    Stimulus step(double riseSeconds) {
        return this == GAUSSIAN ? new GaussianStep(riseSeconds) : new RaisedCosineStep(riseSeconds);
    }

    @Override
    public String toString() {
        return word;
    }
}

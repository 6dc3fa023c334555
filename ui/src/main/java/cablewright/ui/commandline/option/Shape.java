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

    /** What each shape is, formula by formula, for --help. */
    public static final String FORMULAS = "All stimuli are 0 up to t = 0 and reach a height of 1 V:%n"
            + "  half-sine       sin(pi t/D) for 0 < t < D, D = 3w/2; w: width at half height%n"
            + "  rectangular     e(t) - e(t - w); e: raised-cosine step of rise --edge; w: width at half height%n"
            + "  gaussian pulse  exp(-(t - t0)^2/(2 s^2)), s = w/(2 sqrt(2 ln 2)) = 0.424661 w, t0 = 8 s%n"
            + "  raised-cosine   (1 - cos(pi t/T))/2 for 0 < t < T, then 1; T = 1.693956 r; r: 10-90%% rise%n"
            + "  gaussian step   (1 + erf((t - t0)/(s sqrt 2)))/2, s = r/2.563103, t0 = 8 s; r: 10-90%% rise%n"
            + "The outgoing edge is at half height at: half-sine w/4; rectangular 0.846978 r of --edge;%n"
            + "gaussian pulse 8 s - w/2; raised-cosine T/2; gaussian step t0.%n";

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

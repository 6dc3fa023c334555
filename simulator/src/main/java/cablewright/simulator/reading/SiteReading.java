// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.wave.Stimulus;

/**
 * Reads a site off the trace as a person does: the level before it, the first lobe, the foot of its leading edge.
 *
 * <p>The foot is where the tangent at the steepest place of the leading edge meets the level before. For the stimulus as it
 * was sent it lies a known time before half height, which is added; for an echo that loss has blunted it is less late than
 * half height is. What the two differ, a tenth of the width for the event's own form, the bound of the steepest place in
 * noise, σ/(slope √n) for n samples on the edge (Cramér–Rao, as in Kay, Fundamentals of Statistical Signal Processing,
 * Estimation Theory, 1993, ex. 3.13, from memory), and the samples' distance over √12 make up the uncertainty.
 */
final class SiteReading {

    private static final double BASE_FROM_WIDTHS = 1.3;
    private static final double BASE_TO_WIDTHS = 0.8;
    private static final double LOOK_AFTER_WIDTHS = 1.6;
    private static final double SMOOTH_WIDTHS = 0.5;
    private static final double FIRST_LOBE = 0.35;
    private static final double SECOND_LOBE = 0.35;
    private static final double LEAST_OF_EDGE = 0.05;
    private static final double LONG_FRONTS = 3;
    private static final double FORM_SHARE = 0.1;
    private static final double LATE_SHARE = 0.5;

    private final Settings settings;
    private final double traceSampleSeconds;
    private final double[] volts;
    private final double sample;
    private final double first;
    private final double noise;
    private final double velocityUncertainty;
    private final double width;
    private final Front sent;

    /** An edge's foot before half height, and how long it takes at its steepest. */
    private record Front(double footSeconds, double riseSeconds) {}

    SiteReading(Trace trace, double[] volts, double sample, double first, double noise, CandidateRules rules) {
        this.settings = trace.settings();
        this.traceSampleSeconds = trace.sampleSeconds();
        this.sample = sample;
        this.first = first;
        this.noise = noise;
        this.velocityUncertainty = rules.velocityUncertainty();
        this.width = settings.stimulus().resolutionSeconds();
        int half = (int) Math.max(1, Math.round(SMOOTH_WIDTHS * width / sample / 2));
        this.volts = volts.length > 2 * half ? new Smoothing(half, 2).smooth(volts) : volts;
        this.sent = front(settings.stimulus());
    }

    private static Front front(Stimulus stimulus) {
        double step = stimulus.resolutionSeconds() / 1000;
        double steepest = 0;
        double foot = 0;
        for (double t = step; t < stimulus.halfHeightSeconds() + stimulus.resolutionSeconds(); t += step) {
            double slope = (stimulus.at(t) - stimulus.at(t - step)) / step;
            if (slope > steepest) {
                steepest = slope;
                foot = t - step / 2 - (stimulus.at(t) + stimulus.at(t - step)) / 2 / slope;
            }
        }
        return new Front(stimulus.halfHeightSeconds() - foot, 1 / steepest);
    }

    private double at(int index) {
        return volts[Math.max(0, Math.min(volts.length - 1, index))];
    }

    private int samples(double widths) {
        return (int) Math.round(widths * width / sample);
    }

    CandidateEvent of(SiteSearch.Site site) {
        int from = site.index() - samples(BASE_FROM_WIDTHS);
        int to = site.index() + samples(LOOK_AFTER_WIDTHS);
        int start = Math.max(from, site.index() - samples(BASE_TO_WIDTHS));
        double base = 0;
        for (int i = from; i <= start; i++) {
            base += at(i) / (start - from + 1);
        }
        int top = firstTop(start, to, base);
        double height = at(top) - base;
        double half = halfHeight(from, top, base);
        double[] edge = steepest(from, top, base);
        double byHalf = first + half * sample;
        double byFoot = edge[0] == 0 ? byHalf : first + edge[1] * sample + sent.footSeconds();
        double seconds = Math.min(byHalf, byFoot);
        double timing = timing(Math.abs(byHalf - byFoot), edge[0]);
        double metres = settings.metresThereAndBack(seconds);
        double doubt = Math.hypot(
                settings.metresThereAndBack(timing), metres * velocityUncertainty / settings.velocityFraction());
        return new CandidateEvent(
                new Measured(metres, doubt),
                new Measured(seconds, timing),
                new Measured(height, noise),
                shape(top, to, base, edge[0]),
                site.overNoise());
    }

    /** Top of the first lobe that is worth the name. */
    private int firstTop(int start, int to, double base) {
        double most = 0;
        for (int i = start; i <= to; i++) {
            most = Math.max(most, Math.abs(at(i) - base));
        }
        int top = start;
        while (top < to && Math.abs(at(top) - base) < FIRST_LOBE * most) {
            top++;
        }
        double sign = Math.signum(at(top) - base);
        for (int i = top; i <= to && (at(i) - base) * sign > 0; i++) {
            top = (at(i) - at(top)) * sign > 0 ? i : top;
        }
        return top;
    }

    private double halfHeight(int from, int top, double base) {
        double height = at(top) - base;
        int i = top;
        while (i > from && (at(i) - base) / height > 0.5) {
            i--;
        }
        return i == top || at(i + 1) == at(i) ? i : i + (base + height / 2 - at(i)) / (at(i + 1) - at(i));
    }

    /** The steepest slope of the leading edge [V per sample, in its own direction], and where its tangent meets the level. */
    private double[] steepest(int from, int top, double base) {
        double height = at(top) - base;
        double sign = Math.signum(height);
        double[] edge = new double[2];
        for (int j = top; j > from && (at(j) - base) / height > LEAST_OF_EDGE; j--) {
            double slope = (at(j) - at(j - 1)) * sign;
            if (slope > edge[0]) {
                edge[0] = slope;
                edge[1] = j - 0.5 - ((at(j) + at(j - 1)) / 2 - base) * sign / slope;
            }
        }
        return edge;
    }

    private double timing(double late, double slope) {
        double samplesOnEdge = Math.max(1, sent.riseSeconds() / sample);
        double bound = slope == 0 ? width : Math.min(width, noise / slope * sample / Math.sqrt(samplesOnEdge));
        double form = FORM_SHARE * width;
        double square = LATE_SHARE * late * LATE_SHARE * late
                + bound * bound
                + form * form
                + traceSampleSeconds * traceSampleSeconds / 12;
        return Math.sqrt(square);
    }

    private CandidateShape shape(int top, int to, double base, double slope) {
        double height = at(top) - base;
        if (slope == 0 || Math.abs(height) / slope * sample > LONG_FRONTS * sent.riseSeconds()) {
            return CandidateShape.LONG;
        }
        double other = 0;
        for (int j = top; j <= to; j++) {
            other = Math.max(other, (base - at(j)) / height);
        }
        boolean back = settings.stimulus().isStep() ? (at(to) - base) / height < 1 - FIRST_LOBE : other >= SECOND_LOBE;
        if (height > 0) {
            return back ? CandidateShape.UP_AND_BACK : CandidateShape.UP;
        }
        return back ? CandidateShape.DOWN_AND_BACK : CandidateShape.DOWN;
    }
}

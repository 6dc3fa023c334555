// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.instrument.Trace;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds candidate events on a trace, from the trace, its settings and its noise alone.
 *
 * <p>What is known of the outgoing wave is taken off, the rest sharpened ({@link SharpTrace}) and searched with matched
 * filters at a threshold that holds false alarms constant ({@link SiteSearch}); each site is then read off the trace as a
 * person reads it ({@link SiteReading}). Of what stands closer than about 1.2 pulse widths, the plainest is listed.
 *
 * <p>Nothing is sought while the outgoing pulse lasts, nor in the last pulse width of the record. Slow changes, over many
 * pulse widths, are left out with the tails that they look like. A ghost looks like an event and is listed as one. How many
 * events are found is measured on generated cables by a command that DEVELOPERS.md names.
 */
public final class CandidateEvents {

    private static final double SAMPLES_PER_WIDTH = 14;
    private static final double BLIND_WIDTHS = 1.3;
    private static final double SAME_WIDTHS = 0.6;
    private static final double BACK_WIDTHS = 0.95;
    private static final double MOST_OUTGOING = 1.2;
    /** Noise that is reckoned with where a trace has none: a share of the least height that is listed. */
    private static final double NOISE_OF_LEAST = 0.1;

    private static final double LEAST_NOISE = 1e-9;
    private static final double ROUNDING = 1 / Math.sqrt(12);

    private CandidateEvents() {}

    /**
     * Finds candidates by the usual rules.
     *
     * @param trace the trace
     * @return the candidates, nearest first
     */
    public static List<CandidateEvent> on(Trace trace) {
        return on(trace, CandidateRules.usual());
    }

    /**
     * Finds candidates.
     *
     * @param trace the trace
     * @param rules what counts as one
     * @return the candidates, nearest first; the same for the same trace and rules
     */
    public static List<CandidateEvent> on(Trace trace, CandidateRules rules) {
        Stimulus stimulus = trace.settings().stimulus();
        double width = stimulus.resolutionSeconds();
        int every = (int) Math.max(1, Math.floor(width / trace.sampleSeconds() / SAMPLES_PER_WIDTH));
        if (trace.count() < 2 * every) {
            return List.of();
        }
        double sample = trace.sampleSeconds() * every;
        double first = trace.seconds(0) + trace.sampleSeconds() * (every - 1) / 2;
        double[] back = withoutOutgoing(thinned(trace, every), sample, first, stimulus);
        double noise = Math.hypot(trace.noiseVolts(), trace.stepVolts() * ROUNDING) / Math.sqrt(every);
        noise = Math.max(noise, Math.max(LEAST_NOISE, rules.leastVolts() * NOISE_OF_LEAST));
        int zero = (int) Math.round(-first / sample);
        int blind = (int) Math.max(0, Math.min(back.length, Math.ceil((BLIND_WIDTHS * width - first) / sample)));
        SharpTrace sharp = new SharpTrace(back, sample, stimulus);
        SiteReading reading = new SiteReading(trace, back, sample, first, noise, rules);
        List<CandidateEvent> candidates = new ArrayList<>();
        // The plainest come first; what reads to the same lobe as a plainer one is the same event.
        for (SiteSearch.Site site : new SiteSearch(sharp, sample, width, zero, blind, noise, rules).sites()) {
            CandidateEvent candidate = reading.of(site);
            if (candidates.stream().noneMatch(other -> isSame(other, candidate, width))) {
                candidates.add(candidate);
            }
        }
        candidates.sort(
                Comparator.comparingDouble(candidate -> candidate.seconds().value()));
        return List.copyOf(candidates);
    }

    /** Whether a candidate reads to the lobe of a plainer one, or to the lobe by which a plainer one comes back. */
    private static boolean isSame(CandidateEvent plainer, CandidateEvent candidate, double width) {
        double apart = (candidate.seconds().value() - plainer.seconds().value()) / width;
        boolean back = plainer.shape() == CandidateShape.UP_AND_BACK || plainer.shape() == CandidateShape.DOWN_AND_BACK;
        boolean secondLobe = back && apart > 0 && apart < BACK_WIDTHS && candidate.sign() != plainer.sign();
        return Math.abs(apart) < SAME_WIDTHS || secondLobe;
    }

    /** Means of neighbouring samples, where there are more than the pulse needs. */
    private static double[] thinned(Trace trace, int every) {
        double[] all = trace.copyOfVolts();
        double[] means = new double[all.length / every];
        for (int i = 0; i < means.length; i++) {
            double sum = 0;
            for (int j = 0; j < every; j++) {
                sum += all[i * every + j];
            }
            means[i] = sum / every;
        }
        return means;
    }

    /** Takes off as much of the outgoing wave as fits best; a step's own level is off already. */
    private static double[] withoutOutgoing(double[] volts, double sample, double first, Stimulus stimulus) {
        double late = stimulus.halfHeightSeconds() + first;
        double level = stimulus.isStep() ? 1 : 0;
        double both = 0;
        double own = 0;
        for (int i = 0; i < volts.length; i++) {
            double sent = stimulus.at(late + i * sample) - level;
            both += sent * volts[i];
            own += sent * sent;
        }
        double share = own == 0 ? 0 : Math.max(0, Math.min(MOST_OUTGOING, both / own));
        double[] back = new double[volts.length];
        for (int i = 0; i < volts.length; i++) {
            back[i] = volts[i] - share * (stimulus.at(late + i * sample) - level);
        }
        return back;
    }
}

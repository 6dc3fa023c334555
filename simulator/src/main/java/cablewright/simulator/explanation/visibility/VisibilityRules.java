// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import java.util.Optional;

/**
 * The thresholds of visibility, all in one place. They are ours (common practice, no source); a test holds them against
 * the matched-filter bound.
 */
public final class VisibilityRules {

    /** Contrast over noise from which an event is clear. */
    public static final double CLEAR_OVER_NOISE = 6;

    /** Contrast over noise from which an event is marginal. */
    public static final double MARGINAL_OVER_NOISE = 3;

    /** Contrast over clutter from which an event is clear. */
    public static final double CLEAR_OVER_CLUTTER = 0.5;

    /** Share of a condition by which it may fail and still leave the event marginal. */
    public static final double MARGINAL_SHARE = 0.5;

    private VisibilityRules() {}

    /**
     * What a verdict is made from.
     *
     * @param contrastVolts largest change that the event makes in its window [V]
     * @param noiseVolts noise after averaging [V]
     * @param stepVolts step of the converter after averaging [V]
     * @param clutterVolts swing of the trace without the event in the window [V]
     * @param clearOfBlindZone time from the port to the event's largest change, over the time at which the blind zone ends
     * @param clearOfNeighbour time between the event and the nearest edge of another that shows, over the pulse width
     */
    public record Evidence(
            double contrastVolts,
            double noiseVolts,
            double stepVolts,
            double clutterVolts,
            double clearOfBlindZone,
            double clearOfNeighbour) {}

    /**
     * A verdict with the first reason that applies.
     *
     * @param visibility the verdict
     * @param reason why it is not clear
     */
    public record Verdict(Visibility visibility, Optional<HiddenReason> reason) {}

    /**
     * Judges what was measured.
     *
     * @param evidence the measures
     * @return whether the event can be seen, and the first reason why it is not clear
     */
    public static Verdict judge(Evidence evidence) {
        double clutterShare = evidence.clutterVolts() == 0
                ? Double.POSITIVE_INFINITY
                : evidence.contrastVolts() / evidence.clutterVolts() / CLEAR_OVER_CLUTTER;
        double noiseShare = evidence.noiseVolts() == 0
                ? Double.POSITIVE_INFINITY
                : evidence.contrastVolts() / evidence.noiseVolts() / CLEAR_OVER_NOISE;
        double stepShare = evidence.contrastVolts() / evidence.stepVolts();
        // Inside the blind zone the clutter is the outgoing pulse, not a neighbour.
        boolean blind = evidence.clearOfBlindZone() < 1;
        double[] shares = {
            blind ? Math.min(evidence.clearOfBlindZone(), clutterShare) : evidence.clearOfBlindZone(),
            blind ? evidence.clearOfNeighbour() : Math.min(evidence.clearOfNeighbour(), clutterShare),
            noiseShare,
            stepShare
        };
        HiddenReason[] reasons = {
            HiddenReason.BLIND_ZONE,
            evidence.clearOfNeighbour() < 1 ? HiddenReason.MERGED : HiddenReason.OVERSHADOWED,
            HiddenReason.BELOW_NOISE,
            HiddenReason.BELOW_CONVERTER_STEP
        };
        double noiseFloor = MARGINAL_OVER_NOISE / CLEAR_OVER_NOISE;
        Visibility visibility = Visibility.CLEAR;
        Optional<HiddenReason> first = Optional.empty();
        int failed = 0;
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] >= 1) {
                continue;
            }
            failed++;
            double floor = reasons[i] == HiddenReason.BELOW_NOISE ? noiseFloor : MARGINAL_SHARE;
            boolean hides = shares[i] < floor || reasons[i] == HiddenReason.BELOW_CONVERTER_STEP;
            if (hides && visibility != Visibility.HIDDEN) {
                visibility = Visibility.HIDDEN;
                first = Optional.of(reasons[i]);
            }
            if (first.isEmpty()) {
                first = Optional.of(reasons[i]);
            }
        }
        if (visibility == Visibility.CLEAR && failed > 0) {
            visibility = failed == 1 ? Visibility.MARGINAL : Visibility.HIDDEN;
        }
        return new Verdict(visibility, first);
    }
}

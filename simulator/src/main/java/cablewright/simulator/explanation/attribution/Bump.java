// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import java.util.List;

/**
 * One extremum of a trace and the paths that make it.
 *
 * <p>How far it stands out is its value less the mean of its two feet: on either side the next extremum, or where the
 * pulse has passed if that is nearer. All shares follow the same rule, so that a slow tail on which
 * a small bump rides has no share in it; what waves that are not back yet do at a foot is taken off. All are of the trace
 * evened over a third of the pulse's edge.
 *
 * @param shownMetres where it is shown, at the set velocity [m]
 * @param volts its value, for an outgoing wave of 1 V [V]
 * @param standsOutVolts how far it stands out of its sides, negative for a dip [V]
 * @param noiseVolts noise that is left in the evened trace, root mean square [V]
 * @param shares the paths that make it, each with at least a twentieth of what stands out; the largest first
 * @param unexplainedVolts what of it no path accounts for: measured less expected, where the receiver clips as it does [V]
 */
public record Bump(
        double shownMetres,
        double volts,
        double standsOutVolts,
        double noiseVolts,
        List<Share> shares,
        double unexplainedVolts) {

    /** What noise reaches among a few thousand samples: 5 σ is passed by one in two million (normal distribution). */
    private static final double NOISE_REACHES = 5;

    /** Copies the list. */
    public Bump {
        shares = List.copyOf(shares);
    }

    /**
     * What one path adds to a bump.
     *
     * @param path the path
     * @param volts what it adds to how far the bump stands out, with its sign [V]
     */
    public record Share(WavePath path, double volts) {}

    /**
     * Returns whether the paths explain the bump.
     *
     * @return whether they leave no more than half of it over, and at least one has a share
     */
    public boolean isExplained() {
        return !shares.isEmpty() && Math.abs(unexplainedVolts) <= Math.abs(standsOutVolts) / 2;
    }

    /**
     * Returns whether what the paths leave over is no more than noise alone makes somewhere on a trace.
     *
     * @return whether it is at most five times the noise of the evened trace
     */
    public boolean isRestWithinNoise() {
        return Math.abs(unexplainedVolts) <= NOISE_REACHES * noiseVolts;
    }
}

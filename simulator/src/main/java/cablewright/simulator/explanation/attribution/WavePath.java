// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import java.util.List;

/**
 * One way by which part of the wave came back.
 *
 * @param turns where the wave turned round, in order
 * @param orders in how many orders a wave can meet the same and be home at the same time; the path stands for them all
 * @param way the lines it took, in order; empty for what comes back from the port at once
 * @param arrivalSeconds time of its front after the outgoing wave began [s]
 * @param shownMetres where the trace shows it, at the set velocity, from the end tested [m]
 * @param peakVolts its largest value, with its sign, of all orders together, for an outgoing wave of 1 V [V]
 */
public record WavePath(
        List<Turn> turns,
        double orders,
        List<PathLeg> way,
        double arrivalSeconds,
        double shownMetres,
        double peakVolts) {

    /** Copies the lists. */
    public WavePath {
        turns = List.copyOf(turns);
        way = List.copyOf(way);
    }

    /**
     * Distinguishes a ghost from a first echo.
     *
     * @return whether the wave turned more than once
     */
    public boolean isGhost() {
        return turns.size() > 1;
    }

    /**
     * Returns whether the wave went into a branch; where the trace shows it, there is then no place of the line itself.
     *
     * @return whether any of its way is in a branch
     */
    public boolean isThroughBranch() {
        return way.stream().anyMatch(leg -> !leg.branchIds().isEmpty());
    }
}

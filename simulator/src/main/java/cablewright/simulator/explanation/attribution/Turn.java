// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.paths.Reflector;
import java.util.List;

/**
 * A place where a wave turned round.
 *
 * @param at what sent it back
 * @param branchIds names of the events by which the branch leaves on which the place lies, from the line outwards; empty
 *     on the line itself
 * @param cameBy the branch on which the wave came and went, named alike: that of the place, or a branch that leaves there
 */
public record Turn(Reflector at, List<String> branchIds, List<String> cameBy) {

    /** Copies the lists. */
    public Turn {
        branchIds = List.copyOf(branchIds);
        cameBy = List.copyOf(cameBy);
    }

    /**
     * Distinguishes a turn in a branch from one on the line itself.
     *
     * @return whether the wave was in a branch
     */
    public boolean inBranch() {
        return !cameBy.isEmpty();
    }
}

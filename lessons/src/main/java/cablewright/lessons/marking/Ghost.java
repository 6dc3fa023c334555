// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.simulator.paths.Reflector;
import java.util.List;
import java.util.Optional;

/**
 * A re-reflection that a reader may take for an event.
 *
 * @param path what the wave met, in order
 * @param seconds when it comes back [s]
 * @param heightVolts its largest value, with its sign, for an outgoing wave of 1 V [V]
 * @param branch the end of a branch, where it is the first echo of one and no ghost
 */
record Ghost(List<Reflector> path, double seconds, double heightVolts, Optional<BranchEnd> branch) {

    /**
     * The end of a branch of the line.
     *
     * @param tapId the event by which the branch leaves
     * @param alongMetres its length [m]
     */
    record BranchEnd(String tapId, double alongMetres) {}

    Ghost {
        path = List.copyOf(path);
    }
}

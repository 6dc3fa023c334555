// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import java.util.List;

/**
 * A re-reflection that a reader may take for an event.
 *
 * @param path names of what the wave met, in order
 * @param seconds when it comes back [s]
 * @param heightVolts its largest value, with its sign, for an outgoing wave of 1 V [V]
 */
record Ghost(List<String> path, double seconds, double heightVolts) {

    Ghost {
        path = List.copyOf(path);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.simulator.cable.EventKind;
import java.util.List;
import java.util.Optional;

/**
 * Kinds that are mistaken for each other, to be asked one after the other until they are distinguished (contrast is common
 * practice in teaching, no source for the pairs).
 */
public final class ContrastPairs {

    private static final List<List<EventKind>> PAIRS = List.of(
            List.of(EventKind.PINCH, EventKind.PARTIAL_SHORT),
            List.of(EventKind.WATER, EventKind.PINCH),
            List.of(EventKind.WATER, EventKind.GRADUAL_DAMAGE),
            List.of(EventKind.CORRODED_JOINT, EventKind.PARTIAL_OPEN),
            List.of(EventKind.PARTIAL_OPEN, EventKind.ONE_SIDE_OPEN),
            List.of(EventKind.SPREAD_PAIR, EventKind.ONE_SIDE_OPEN),
            List.of(EventKind.SPLIT, EventKind.ONE_SIDE_OPEN),
            List.of(EventKind.PARTIAL_SHORT, EventKind.ONE_SIDE_EARTHED),
            List.of(EventKind.PARTIAL_SHORT, EventKind.CROSS),
            List.of(EventKind.OPEN, EventKind.PARTIAL_OPEN),
            List.of(EventKind.SHORT, EventKind.PARTIAL_SHORT));

    private ContrastPairs() {}

    /**
     * Returns the kind to ask next to one that was taken for something else.
     *
     * @param truth what it was
     * @param takenFor what it was taken for
     * @return the other of the pair, if the two are one that is trained so
     */
    public static Optional<EventKind> partner(EventKind truth, EventKind takenFor) {
        return PAIRS.stream().anyMatch(pair -> pair.contains(truth) && pair.contains(takenFor)) && truth != takenFor
                ? Optional.of(takenFor)
                : Optional.empty();
    }
}

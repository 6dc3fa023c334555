// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one event that could be asked for was answered.
 *
 * @param kind what it is
 * @param truth whether it belongs
 * @param flaggedKind what it was taken for; absent where it was missed
 * @param flaggedVerdict what was said of it; absent where it was missed
 * @param placeErrorMetres distance with its sign, flagged less expected [m]; absent where it was missed
 * @param marks marks earned, 0 to 10
 */
public record Outcome(
        EventKind kind,
        Verdict truth,
        Optional<EventKind> flaggedKind,
        Optional<Verdict> flaggedVerdict,
        OptionalDouble placeErrorMetres,
        double marks) {

    /**
     * Returns how well it was answered.
     *
     * @return share of its ten marks, 0 to 1
     */
    public double success() {
        return Math.max(0, Math.min(1, marks / 10));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import java.util.List;

/**
 * A flag taken as one for an event.
 *
 * @param flag the flag
 * @param event the event
 * @param places how near its places are
 * @param kindMarks marks for the kind
 * @param verdictMarks marks for the verdict
 */
record Pairing(Flag flag, LineEvent event, List<PlaceMark> places, double kindMarks, double verdictMarks) {

    /** So small that it decides only between equals: a flag stands for an event rather than for none, and for a nearer one. */
    private static final double TIE_BREAK = 1e-6;

    /** Marks of all that was right; nothing for what nobody could see. */
    double earned() {
        if (event.standing() == Requirement.HIDDEN) {
            return 0;
        }
        return placeMarks() + kindMarks + verdictMarks;
    }

    private double placeMarks() {
        return places.stream().mapToDouble(PlaceMark::marks).sum();
    }

    boolean isNeedlessDig() {
        return PlaceJudge.isDamage(flag) && event.truth() == Verdict.BELONGS;
    }

    /** What the pairing is worth to the trainee, with needless digs counted. */
    double worth() {
        double cost = isNeedlessDig() ? MarkingRules.DIG_COST_MARKS : 0;
        return earned() - cost + TIE_BREAK * (2 - farness());
    }

    /** Mean error in the unit of three tolerances, at most 1. */
    private double farness() {
        return places.stream()
                .mapToDouble(place -> Math.min(place.errorMetres(), place.readErrorMetres())
                        / place.toleranceMetres()
                        / MarkingRules.NO_MATCH_TOLERANCES)
                .map(far -> Math.min(1, far))
                .average()
                .orElse(1);
    }

    /** Whether every place is within its tolerance. */
    boolean isThere() {
        return places.stream().allMatch(PlaceMark::isThere);
    }

    boolean hasRightKind() {
        return kindMarks >= event.marks().kindMarks();
    }
}

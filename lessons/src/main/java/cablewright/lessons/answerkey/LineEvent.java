// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.PartMarks;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import java.util.Optional;

/**
 * One event of the true cable as marking sees it.
 *
 * @param eventId the event's name; {@link cablewright.simulator.explanation.visibility.VisibilityAnalysis#END_OF_LINE} for the end of the line
 * @param kind what the trade calls it
 * @param truth whether it belongs
 * @param standing whether it can be asked for
 * @param trueStartMetres where it begins on the cable, from the near end [m]
 * @param trueEndMetres where it ends on the cable, from the near end [m]
 * @param best how it shows where it shows best
 * @param ruling how the instructor wants it marked; empty where the usual rules hold
 */
public record LineEvent(
        String eventId,
        EventKind kind,
        Verdict truth,
        Requirement standing,
        double trueStartMetres,
        double trueEndMetres,
        BestView best,
        Optional<EventRuling> ruling) {

    /**
     * Returns the marks of its parts.
     *
     * @return what the instructor set, or the usual
     */
    public PartMarks marks() {
        return ruling.flatMap(EventRuling::marks).orElse(PartMarks.USUAL);
    }
}

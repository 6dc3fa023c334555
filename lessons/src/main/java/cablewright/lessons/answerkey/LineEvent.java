// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.PartMarks;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.paths.Reflector;
import java.util.Optional;

/**
 * One event of the true cable as marking sees it.
 *
 * @param eventId the event's name; empty for the end of the line
 * @param kind what the trade calls it
 * @param truth whether it belongs
 * @param standing whether it can be asked for
 * @param trueStartMetres where it begins on the cable, from the near end [m]
 * @param trueEndMetres where it ends on the cable, from the near end [m]
 * @param best how it shows where it shows best
 * @param ruling how the instructor wants it marked; empty where the usual rules hold
 */
public record LineEvent(
        Optional<String> eventId,
        EventKind kind,
        Verdict truth,
        Requirement standing,
        double trueStartMetres,
        double trueEndMetres,
        BestView best,
        Optional<EventRuling> ruling) {

    /**
     * Says what sends the wave back there.
     *
     * @return the event, or the end of the line
     */
    public Reflector reflector() {
        return eventId.map(Reflector::event).orElseGet(Reflector.EndOfLine::new);
    }

    /**
     * Returns whether it is an event of a cable.
     *
     * @param id the event's name
     * @return whether it is that event
     */
    public boolean is(String id) {
        return eventId.filter(id::equals).isPresent();
    }

    /**
     * Finds it on its cable.
     *
     * @param cable the cable
     * @return the event; empty for the end of the line
     */
    public Optional<Event> on(Cable cable) {
        return eventId.flatMap(cable::event);
    }

    /**
     * Returns the marks of its parts.
     *
     * @return what the instructor set, or the usual
     */
    public PartMarks marks() {
        return ruling.flatMap(EventRuling::marks).orElse(PartMarks.USUAL);
    }
}

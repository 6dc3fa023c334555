// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the instructor wants one event marked; what is left out is marked by the usual rules.
 *
 * @param eventId the event of the cable
 * @param verdict whether it belongs or is damage; absent to judge by kind, size and record
 * @param toleranceMetres how near a place must be to count in full, above 0 to 10000 [m]; absent for that of the exercise
 * @param acceptedKinds kinds that earn full marks beside its own, at most 30
 * @param marks marks of its parts; absent for the usual ones
 */
public record EventRuling(
        @Id String eventId,
        Optional<Verdict> verdict,
        @Above(floor = 0, most = 10_000) OptionalDouble toleranceMetres,
        @Entries(most = 30, distinct = true) List<EventKind> acceptedKinds,
        Optional<PartMarks> marks) {

    /** Copies the list and checks the ranges. */
    public EventRuling {
        Require.components(EventRuling.class, eventId, verdict, toleranceMetres, acceptedKinds, marks);
        acceptedKinds = List.copyOf(acceptedKinds);
    }

    /**
     * Makes a ruling that changes nothing.
     *
     * @param eventId the event
     * @return the usual rules
     */
    public static EventRuling usual(String eventId) {
        return new EventRuling(eventId, Optional.empty(), OptionalDouble.empty(), List.of(), Optional.empty());
    }

    /**
     * Returns whether the usual rules hold.
     *
     * @return true if the ruling changes nothing
     */
    public boolean isUsual() {
        return equals(usual(eventId));
    }
}

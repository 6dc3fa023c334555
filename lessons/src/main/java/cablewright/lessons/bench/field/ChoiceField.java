// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import cablewright.simulator.cable.Event;
import java.util.List;
import java.util.function.Function;

/**
 * A choice of an event, such as how its depth varies along it.
 *
 * @param key a key for its words
 * @param choices the words of what can be chosen, lower-case with hyphens
 * @param chosen the one that is
 * @param change makes the event of another choice
 */
public record ChoiceField(String key, List<String> choices, String chosen, Function<String, Event> change)
        implements EventField {

    /** Copies the list. */
    public ChoiceField {
        choices = List.copyOf(choices);
    }

    /**
     * Makes the event of another choice.
     *
     * @param choice one of the choices
     * @return the event
     * @throws IllegalArgumentException if the event's other values forbid it
     */
    public Event with(String choice) {
        return change.apply(choice);
    }
}

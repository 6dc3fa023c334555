// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import cablewright.simulator.cable.Event;
import cablewright.simulator.check.Components;
import cablewright.simulator.check.Range;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A number of an event: what it is, what is allowed, over which part of that a slider runs, and what event comes of another
 * value.
 *
 * @param key a key for its words
 * @param measure what it measures
 * @param value what it is; empty where it is left out
 * @param allowed what may be
 * @param slider over what a slider runs
 * @param mayBeAbsent whether it can be left out
 * @param change makes the event of another value; throws where the event's other values forbid it
 */
public record NumberField(
        String key,
        Measure measure,
        OptionalDouble value,
        Range allowed,
        Travel slider,
        boolean mayBeAbsent,
        Function<OptionalDouble, Event> change)
        implements EventField {

    /**
     * Over what a slider runs: the values that are met in practice.
     *
     * @param from value at its low end
     * @param to value at its high end, above {@code from}
     * @param logarithmic whether equal steps of the slider are equal factors
     */
    public record Travel(double from, double to, boolean logarithmic) {

        /** Returns a slider on which equal steps are equal differences. */
        public static Travel even(double from, double to) {
            return new Travel(from, to, false);
        }

        /** Returns a slider on which equal steps are equal factors. */
        public static Travel byFactors(double from, double to) {
            return new Travel(from, to, true);
        }

        /**
         * Returns the slider over the values that are stated as usual on a component of a record.
         *
         * @throws IllegalStateException if none are stated
         */
        public static Travel of(Class<?> type, String component) {
            return Components.of(type)
                    .named(component)
                    .usual()
                    .map(usual -> new Travel(usual.from(), usual.to(), usual.byFactors()))
                    .orElseThrow(() ->
                            new IllegalStateException("no usual values are stated on " + component + " of " + type));
        }

        /**
         * Returns the value at a place of the slider.
         *
         * @param place 0 at the low end, 1 at the high end
         * @return the value
         */
        public double at(double place) {
            return logarithmic ? from * Math.pow(to / from, place) : from + (to - from) * place;
        }

        /**
         * Returns where on the slider a value is.
         *
         * @param value the value
         * @return 0 at the low end to 1 at the high end; values beyond are at that end
         */
        public double placeOf(double value) {
            double place = logarithmic
                    ? Math.log(Math.max(value, from) / from) / Math.log(to / from)
                    : (value - from) / (to - from);
            return Math.max(0, Math.min(1, place));
        }
    }

    /** Why a value can't be. */
    public enum Fault {
        /** It is less than what is allowed. */
        TOO_SMALL,
        /** It is more than what is allowed. */
        TOO_LARGE
    }

    /**
     * Looks whether a value may be, by itself.
     *
     * @param wanted the value
     * @return what is wrong with it; empty where nothing is
     */
    public Optional<Fault> faultOf(double wanted) {
        if (allowed.contains(wanted)) {
            return Optional.empty();
        }
        return Optional.of(wanted > allowed.most() ? Fault.TOO_LARGE : Fault.TOO_SMALL);
    }

    /**
     * Makes the event of another value.
     *
     * @param wanted the value
     * @return the event
     * @throws IllegalArgumentException if it can't be; the message says what is allowed
     */
    public Event with(double wanted) {
        return change.apply(OptionalDouble.of(wanted));
    }

    /**
     * Makes the event with the value left out.
     *
     * @return the event
     * @throws IllegalArgumentException if it can't be left out
     */
    public Event without() {
        if (!mayBeAbsent) {
            throw new IllegalArgumentException(key + " can't be left out; give a value");
        }
        return change.apply(OptionalDouble.empty());
    }
}

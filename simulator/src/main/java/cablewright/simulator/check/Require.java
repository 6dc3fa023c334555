// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Checks of arguments for the whole program. Each refusal is one sentence that names the field, its value and what is
 * allowed: "lossDecibels is 50; allowed is above 0, at most 40".
 */
public final class Require {

    private Require() {}

    /**
     * Checks all components of a record by what is stated on them, and that none is missing. A record's constructor calls it
     * first; what a limit of one component depends on another for, the constructor checks itself.
     *
     * @param type the record
     * @param values the components' values, all of them, in their order
     * @throws IllegalArgumentException if one is missing or not allowed
     */
    public static void components(Class<? extends Record> type, Object... values) {
        Components.of(type).check(values);
    }

    /** Checks that a number lies within a range. */
    public static double within(String field, double value, Range range) {
        if (!range.contains(value)) {
            String shown = Readable.number(value);
            boolean misleads = Double.isFinite(value) && range.contains(Double.parseDouble(shown));
            throw refusal(field, misleads ? Readable.exact(value) : shown, range.words());
        }
        return value;
    }

    /** Checks that a number lies within limits, both of them allowed. */
    public static double between(String field, double value, double least, double most) {
        return within(field, value, Range.between(least, most));
    }

    /** Checks that a number is finite and not below a limit. */
    public static double atLeast(String field, double value, double least) {
        return within(field, value, Range.between(least, Double.MAX_VALUE));
    }

    /** Checks that a number is finite and above a limit. */
    public static double above(String field, double value, double floor) {
        return within(field, value, Range.above(floor, Double.MAX_VALUE));
    }

    /** Checks that a number lies above one limit and at most at another. */
    public static double above(String field, double value, double floor, double most) {
        return within(field, value, Range.above(floor, most));
    }

    /** Checks that a number is at least at one limit and below another. */
    public static double below(String field, double value, double least, double ceiling) {
        return within(field, value, Range.below(least, ceiling));
    }

    /** Checks a condition on a number that words say best. */
    public static double that(boolean holds, String field, double value, String allowed) {
        if (!holds) {
            throw refusal(field, Readable.number(value), allowed);
        }
        return value;
    }

    static void powerOfTwo(String field, int value, PowerOfTwo allowed) {
        that(
                value >= allowed.least() && value <= allowed.most() && Integer.bitCount(value) == 1,
                field,
                value,
                "a power of two from " + allowed.least() + " to " + allowed.most());
    }

    static void matches(String field, String value, Matches form) {
        if (!value.matches(form.pattern())) {
            throw refusal(field, Readable.quoted(value), form.words());
        }
    }

    static void text(String field, String value, Text limit) {
        if (!isText(value, limit.least(), limit.most()) || value.indexOf('\n') >= 0 || value.indexOf('\t') >= 0) {
            throw refusal(
                    field,
                    Readable.quoted(value),
                    limit.least() + " to " + limit.most() + " characters on one line, without control characters");
        }
    }

    static void lines(String field, String value, Lines limit) {
        if (!isText(value, 1, limit.most())) {
            throw refusal(
                    field,
                    Readable.quoted(value),
                    "1 to " + limit.most()
                            + " characters in lines, without control characters other than line feed and tab");
        }
    }

    private static boolean isText(String value, int least, int most) {
        return (least == 0 || !value.isBlank())
                && value.length() <= most
                && value.codePoints().allMatch(it -> it == '\n' || it == '\t' || Characters.isPrintable(it));
    }

    /** Checks that a value is given. */
    public static <T> T present(String field, T value) {
        if (value == null) {
            throw new IllegalArgumentException(field + " is missing; it must be given");
        }
        return value;
    }

    static void entries(String field, List<?> values, Entries allowed) {
        int count = values.size();
        if (count < allowed.least() || count > allowed.most()) {
            throw new IllegalArgumentException(field + " has " + count + (count == 1 ? " entry" : " entries")
                    + "; allowed is " + countWords(allowed));
        }
        if (allowed.distinct()) {
            distinct(field, values, Object::toString);
        }
    }

    private static String countWords(Entries allowed) {
        return allowed.most() == Integer.MAX_VALUE
                ? allowed.least() + " or more"
                : allowed.least() + " to " + allowed.most();
    }

    /** Checks that no two entries of a list have the same name. */
    public static <T> void distinct(String field, List<? extends T> values, Function<T, String> name) {
        Set<String> seen = new HashSet<>();
        for (T value : values) {
            if (!seen.add(name.apply(value))) {
                throw new IllegalArgumentException(field + " has " + Readable.quoted(name.apply(value))
                        + " twice; each entry must differ from the others");
            }
        }
    }

    private static IllegalArgumentException refusal(String field, String value, String allowed) {
        return new IllegalArgumentException(field + " is " + value + "; allowed is " + allowed);
    }
}

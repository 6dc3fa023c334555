// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.util.Locale;

/** Refusals of values that can't exist, each in one sentence that names field, value and what is allowed. */
public final class Require {

    private static final int MOST_TEXT = 200;

    private Require() {}

    /** Checks that a number lies within limits, both of them allowed. */
    public static double between(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s is %s; allowed is %s to %s", field, number(value), number(least), number(most)));
        }
        return value;
    }

    /** Checks that a number lies above one limit and at most at another. */
    public static double above(String field, double value, double floor, double most) {
        if (!(value > floor && value <= most)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s is %s; it must be greater than %s and at most %s",
                    field,
                    number(value),
                    number(floor),
                    number(most)));
        }
        return value;
    }

    /** Checks a name within a file. */
    public static String id(String value) {
        if (value == null || !value.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,39}")) {
            throw new IllegalArgumentException("id is \"" + value
                    + "\"; an id has 1 to 40 letters, digits, '-' or '_' and starts with a letter or digit");
        }
        return value;
    }

    /** Checks a short text. */
    public static String text(String field, String value) {
        if (value == null || value.isBlank() || value.length() > MOST_TEXT) {
            throw new IllegalArgumentException(
                    field + " is \"" + value + "\"; it needs 1 to " + MOST_TEXT + " characters of text");
        }
        return value;
    }

    /** Checks that a value is given. */
    public static <T> T present(String field, T value) {
        if (value == null) {
            throw new IllegalArgumentException(field + " is missing; it must be given");
        }
        return value;
    }

    private static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        return Double.toString(value);
    }
}

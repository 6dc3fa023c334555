// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Refusals of values that can't be, each in one sentence that names field, value and what is allowed. */
final class Require {

    /** Most characters of a title, a label or a name. */
    static final int MOST_LINE = 200;

    /** Most characters of a text of several paragraphs. */
    static final int MOST_TEXT = 20_000;

    private static final int MOST_QUOTED = 60;

    private Require() {}

    public static String id(String field, String value) {
        if (value == null || !value.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,39}")) {
            throw new IllegalArgumentException(field + " is " + quoted(value)
                    + "; it needs 1 to 40 letters, digits, '-' or '_' and starts with a letter or digit");
        }
        return value;
    }

    static String line(String field, String value) {
        present(field, value);
        if (value.isBlank() || value.length() > MOST_LINE || value.indexOf('\n') >= 0) {
            throw new IllegalArgumentException(
                    field + " is " + quoted(value) + "; it needs 1 to " + MOST_LINE + " characters on one line");
        }
        return value;
    }

    public static String text(String field, String value) {
        present(field, value);
        if (value.isBlank() || value.length() > MOST_TEXT || value.indexOf('\r') >= 0) {
            throw new IllegalArgumentException(field + " is " + quoted(value) + "; it needs 1 to " + MOST_TEXT
                    + " characters of text with plain line feeds");
        }
        return value;
    }

    public static <T> T present(String field, T value) {
        if (value == null) {
            throw new IllegalArgumentException(field + " is missing; it must be given");
        }
        return value;
    }

    public static double between(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(field + " is " + value + "; allowed is " + least + " to " + most);
        }
        return value;
    }

    public static double above(String field, double value, double floor, double most) {
        if (!(value > floor && value <= most)) {
            throw new IllegalArgumentException(
                    field + " is " + value + "; it must be greater than " + floor + " and at most " + most);
        }
        return value;
    }

    static <T> List<T> list(String field, List<T> values, int least, int most) {
        List<T> copy = List.copyOf(present(field, values));
        if (copy.size() < least || copy.size() > most) {
            throw new IllegalArgumentException(
                    field + " has " + copy.size() + " entries; allowed are " + least + " to " + most);
        }
        return copy;
    }

    static <T> void distinct(String field, List<T> values, Function<T, String> name) {
        Set<String> seen = new HashSet<>();
        for (T value : values) {
            if (!seen.add(name.apply(value))) {
                throw new IllegalArgumentException(
                        field + " has " + quoted(name.apply(value)) + " twice; each entry must differ from the others");
            }
        }
    }

    private static String quoted(String value) {
        if (value == null) {
            return "missing";
        }
        String shown = value.length() > MOST_QUOTED ? value.substring(0, MOST_QUOTED) + "…" : value;
        return "\"" + shown.replace('\n', ' ').replace('\r', ' ') + "\"";
    }
}

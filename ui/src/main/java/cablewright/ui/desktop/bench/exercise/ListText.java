// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Several values in one field, parted by commas or semicolons. An entry without a unit takes that of the next entry that
 * has one; an entry that stands there unchanged keeps its value to the last digit.
 *
 * @param show writes a value with its unit
 * @param read reads one, and throws with a sentence where it can't
 * @param order how the values are ordered
 * @param bareUnit the unit of entries where none has one; empty where one must be given
 * @param <T> what the values are
 */
record ListText<T>(Function<T, String> show, Function<String, T> read, Comparator<T> order, String bareUnit) {

    private static final Pattern BARE = Pattern.compile("[0-9.]+");
    private static final Pattern UNIT = Pattern.compile("^[0-9.]+\\s*(\\D.*)$");

    String write(List<T> values) {
        return String.join(", ", values.stream().map(show).toList());
    }

    /** The values in order, each once. */
    List<T> read(String typed, List<T> before) {
        List<String> entries = entries(typed);
        List<T> values = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            T value = value(entries, i, before);
            if (!values.contains(value)) {
                values.add(value);
            }
        }
        values.sort(order);
        return values;
    }

    private static List<String> entries(String typed) {
        List<String> entries = new ArrayList<>();
        for (String part : typed.split("[,;]")) {
            if (!part.isBlank()) {
                entries.add(part.strip().replace('\u00a0', ' '));
            }
        }
        return entries;
    }

    private T value(List<String> entries, int index, List<T> before) {
        String entry = entries.get(index);
        String whole = BARE.matcher(entry).matches() ? entry + unitBehind(entries, index) : entry;
        Optional<T> same = before.stream()
                .filter(one -> plain(show.apply(one)).equals(plain(whole)))
                .findFirst();
        return same.orElseGet(() -> read.apply(whole));
    }

    private static String plain(String text) {
        return text.replace("\u00a0", "").replace(" ", "");
    }

    private String unitBehind(List<String> entries, int index) {
        for (String entry : entries.subList(index, entries.size())) {
            Matcher unit = UNIT.matcher(entry);
            if (unit.matches()) {
                return unit.group(1);
            }
        }
        return bareUnit;
    }
}

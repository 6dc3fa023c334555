// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The words of what can be chosen: names of constants in lower case with hyphens. */
public final class BenchChoices {

    private BenchChoices() {}

    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static List<String> words(Enum<?>[] values) {
        return Arrays.stream(values).map(BenchChoices::word).toList();
    }

    /** Returns the constant that goes by a word. */
    public static <E extends Enum<E>> E of(String word, E[] values) {
        return Arrays.stream(values)
                .filter(value -> word(value).equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + word + "\" can't be chosen; allowed are " + String.join(", ", words(values))));
    }
}

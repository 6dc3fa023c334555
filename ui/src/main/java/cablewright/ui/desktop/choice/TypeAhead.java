// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.choice;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * Finds a name by its beginning. Letters typed in quick succession make one beginning; the same letter again and again goes
 * through the names that begin with it.
 */
final class TypeAhead {

    private static final double PAUSE_SECONDS = 1.2;

    private String typed = "";
    private double lastSeconds = Double.NEGATIVE_INFINITY;

    /**
     * Takes one more letter.
     *
     * @param letter what was typed
     * @param seconds when [s]
     * @param names the names, in their order
     * @param now which is chosen; below 0 for none
     * @return which to choose; empty where no name begins so
     */
    OptionalInt type(String letter, double seconds, List<String> names, int now) {
        typed = seconds - lastSeconds > PAUSE_SECONDS ? letter : typed + letter;
        lastSeconds = seconds;
        String beginning = typed.toLowerCase(Locale.ROOT);
        OptionalInt found = from(Math.max(0, now), beginning, names);
        boolean oneLetter = beginning.chars().distinct().count() == 1;
        if (oneLetter && (beginning.length() == 1 || found.isEmpty())) {
            return from(now + 1, beginning.substring(0, 1), names);
        }
        if (found.isEmpty()) {
            typed = letter;
            return from(now + 1, letter.toLowerCase(Locale.ROOT), names);
        }
        return found;
    }

    private static OptionalInt from(int first, String beginning, List<String> names) {
        for (int i = 0; i < names.size(); i++) {
            int index = Math.floorMod(first + i, names.size());
            if (names.get(index).toLowerCase(Locale.ROOT).startsWith(beginning)) {
                return OptionalInt.of(index);
            }
        }
        return OptionalInt.empty();
    }
}

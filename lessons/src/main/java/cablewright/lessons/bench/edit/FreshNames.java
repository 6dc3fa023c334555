// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import java.util.Collection;
import java.util.random.RandomGenerator;

/** Names that nothing else has yet. */
public final class FreshNames {

    private static final int MOST_CHARACTERS = 40;

    private static final int DRAWN = 6;

    private FreshNames() {}

    /**
     * A stem with six letters and digits behind it, drawn anew.
     *
     * @param stem how the name begins
     * @param random where it is drawn from
     * @return such as {@code new-line-4k9q2z}
     */
    public static String drawn(String stem, RandomGenerator random) {
        StringBuilder tail = new StringBuilder("-");
        for (int i = 0; i < DRAWN; i++) {
            tail.append(Character.forDigit(random.nextInt(Character.MAX_RADIX), Character.MAX_RADIX));
        }
        return stem.substring(0, Math.min(stem.length(), MOST_CHARACTERS - tail.length())) + tail;
    }

    /** The wanted name if it is free; else its stem with the least number from 2 on that is. */
    public static String free(String wanted, Collection<String> taken) {
        if (!taken.contains(wanted)) {
            return wanted;
        }
        String stem = wanted.replaceFirst("-?[0-9]+$", "");
        if (stem.isEmpty()) {
            stem = wanted;
        }
        for (int number = 2; ; number++) {
            String tail = "-" + number;
            String name = stem.substring(0, Math.min(stem.length(), MOST_CHARACTERS - tail.length())) + tail;
            if (!taken.contains(name)) {
                return name;
            }
        }
    }

    /** A stem with the least number from 1 on that is free. */
    static String numbered(String stem, Collection<String> taken) {
        for (int number = 1; ; number++) {
            String name = stem + number;
            if (!taken.contains(name)) {
                return name;
            }
        }
    }
}

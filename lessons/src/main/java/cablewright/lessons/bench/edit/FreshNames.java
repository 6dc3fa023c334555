// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import java.util.Collection;

/** Names that nothing else has yet. */
public final class FreshNames {

    private static final int MOST_CHARACTERS = 40;

    private FreshNames() {}

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

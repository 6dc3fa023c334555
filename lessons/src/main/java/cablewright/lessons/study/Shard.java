// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of a study: every n-th row, so that all shards take about as long.
 *
 * @param number which, from 1
 * @param of how many there are, 1 to 100000
 */
public record Shard(int number, int of) {

    private static final Pattern TEXT = Pattern.compile("([0-9]{1,6})/([0-9]{1,6})");
    private static final int MOST = 100_000;

    /** Refuses a shard that isn't one. */
    public Shard {
        if (of < 1 || of > MOST || number < 1 || number > of) {
            throw new IllegalArgumentException("shard is " + number + "/" + of
                    + "; write which and of how many, from 1/" + of + " on, such as 3/16");
        }
    }

    /**
     * Reads a shard.
     *
     * @param text such as "3/16"
     * @return the shard
     */
    public static Shard parse(String text) {
        Matcher matcher = TEXT.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException("shard is \"" + text + "\"; write which and of how many, such as 3/16");
        }
        return new Shard(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    boolean has(int row) {
        return row % of == number - 1;
    }

    /** How many of so many rows are in this shard. */
    int count(int rows) {
        return rows < number ? 0 : (rows - number) / of + 1;
    }

    @Override
    public String toString() {
        return number + "/" + of;
    }
}

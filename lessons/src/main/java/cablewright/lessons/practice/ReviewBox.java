// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import java.time.Duration;
import java.time.Instant;

/**
 * When to ask again what went wrong: boxes of growing intervals. Right moves an item one box up, wrong moves it to the first.
 *
 * <p>Source: S. Leitner, So lernt man lernen (1972), the five-box system (from memory); the intervals of 1, 2, 4, 8 and 16
 * days are common practice, no source.
 *
 * @param box 1 to {@value #LAST}; an item answered right in the last box is done
 * @param dueAt when it is to be asked again
 * @param done whether it needs no more review
 */
public record ReviewBox(int box, Instant dueAt, boolean done) {

    /** The last box. */
    public static final int LAST = 5;

    /** Refuses a box that isn't there. */
    public ReviewBox {
        if (box < 1 || box > LAST) {
            throw new IllegalArgumentException("box is " + box + "; allowed is 1 to " + LAST);
        }
    }

    /**
     * Puts a mistake into the first box.
     *
     * @param now when it was made
     * @return the box, due after a day
     */
    public static ReviewBox ofMistake(Instant now) {
        return new ReviewBox(1, now.plus(interval(1)), false);
    }

    /**
     * Moves the item after a review.
     *
     * @param right whether it was answered right
     * @param now when
     * @return the box that it goes to
     */
    public ReviewBox after(boolean right, Instant now) {
        if (!right) {
            return ofMistake(now);
        }
        if (box == LAST) {
            return new ReviewBox(LAST, now, true);
        }
        return new ReviewBox(box + 1, now.plus(interval(box + 1)), false);
    }

    /**
     * Returns whether it is time.
     *
     * @param now the time
     * @return whether the item is to be asked
     */
    public boolean isDue(Instant now) {
        return !done && !now.isBefore(dueAt);
    }

    private static Duration interval(int box) {
        return Duration.ofDays(1L << (box - 1));
    }
}

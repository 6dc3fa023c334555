// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

/**
 * An ability or a difficulty as answers have shown it so far.
 *
 * @param logits the estimate [logits]; 0 is the middle of all
 * @param answers how many answers it rests on, 0 or more
 */
public record Rating(double logits, int answers) {

    /** Nothing is known yet. */
    public static final Rating UNKNOWN = new Rating(0, 0);

    /** Checks the ranges. */
    public Rating {
        if (!Double.isFinite(logits) || Math.abs(logits) > 20) {
            throw new IllegalArgumentException("logits is " + logits + "; allowed is -20 to 20");
        }
        if (answers < 0) {
            throw new IllegalArgumentException("answers is " + answers + "; it must be 0 or more");
        }
    }

    Rating moved(double surprise) {
        double next = logits + Elo.step(answers) * surprise;
        return new Rating(Math.max(-20, Math.min(20, next)), answers + 1);
    }
}

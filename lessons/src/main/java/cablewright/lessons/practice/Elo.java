// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

/**
 * The Elo model of practice: a chance of success from ability and difficulty, and small steps of both after each answer.
 *
 * <p>P = 1/(1 + e^(d − θ)); after an answer c (0 to 1) θ grows by U(n)·(c − P) and d falls by U(m)·(c − P), where
 * U(n) = a/(1 + b n) with a = 1 and b = 0.05, n and m counting the answers that each has seen. Source: R. Pelánek,
 * Applications of the Elo rating system in adaptive educational systems, Computers &amp; Education 98, 169–179 (2016),
 * sec. 2 (equations by number from memory). Same scale as the one-parameter item response model, so θ − d is in logits.
 */
public final class Elo {

    private static final double FIRST_STEP = 1;
    private static final double SHRINKING = 0.05;

    private Elo() {}

    /**
     * Returns the chance of success.
     *
     * @param ability θ [logits]
     * @param difficulty d [logits]
     * @return chance, 0 to 1
     */
    public static double chance(double ability, double difficulty) {
        return 1 / (1 + Math.exp(difficulty - ability));
    }

    /**
     * Returns the difficulty at which a trainee of some ability has a given chance.
     *
     * @param ability θ [logits]
     * @param chance the chance, above 0 and below 1
     * @return d [logits]
     */
    public static double difficultyFor(double ability, double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("chance is " + chance + "; it must be above 0 and below 1");
        }
        return ability - Math.log(chance / (1 - chance));
    }

    static double step(int answers) {
        return FIRST_STEP / (1 + SHRINKING * answers);
    }
}

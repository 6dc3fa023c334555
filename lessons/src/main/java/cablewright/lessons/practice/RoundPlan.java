// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.simulator.cable.EventKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * What the exercises of a round are about, in order. Seven tenths come from what is weak, the rest from what is not: practice
 * of one thing alone teaches to expect it (interleaving is common practice in teaching, no source for the share).
 *
 * @param kinds one kind of damage for each exercise
 */
public record RoundPlan(List<EventKind> kinds) {

    /** How many exercises a round has. */
    public static final int USUAL_EXERCISES = 10;

    /** Share of the exercises that come from what is weak. */
    public static final double WEAK_SHARE = 0.7;

    /** A round trains no more weak kinds than this: each is to come at least twice. */
    private static final int MOST_WEAK = 3;

    /** Copies the list. */
    public RoundPlan {
        kinds = List.copyOf(kinds);
    }

    /**
     * Plans a round.
     *
     * @param weak what is weak, the weakest first; of kinds that can't be practised nothing is planned
     * @param known kinds that can be practised, at least one
     * @param exercises how many exercises, 1 or more
     * @param seed the same seed gives the same plan
     * @return the plan; the first exercise is about the weakest kind
     */
    public static RoundPlan of(List<EventKind> weak, List<EventKind> known, int exercises, long seed) {
        if (known.isEmpty() || exercises < 1) {
            throw new IllegalArgumentException("known has " + known.size() + " kinds and exercises is " + exercises
                    + "; a round needs at least one of each");
        }
        Random random = new Random(seed);
        List<EventKind> trained = weak.stream()
                .filter(known::contains)
                .distinct()
                .limit(MOST_WEAK)
                .toList();
        List<EventKind> others = new ArrayList<>(known);
        others.removeAll(trained);
        Collections.shuffle(others, random);
        int fromWeak = trained.isEmpty()
                ? 0
                : others.isEmpty() ? exercises : Math.max(1, (int) Math.round(WEAK_SHARE * exercises));
        List<EventKind> plan = new ArrayList<>();
        for (int i = 0; i < exercises; i++) {
            List<EventKind> from = i < fromWeak ? trained : others;
            plan.add(from.get((i < fromWeak ? i : i - fromWeak) % from.size()));
        }
        Collections.shuffle(plan.subList(Math.min(1, fromWeak), plan.size()), random);
        return new RoundPlan(plan);
    }
}

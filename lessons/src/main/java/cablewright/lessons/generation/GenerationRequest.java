// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.EventKind;
import java.util.Arrays;
import java.util.List;

/**
 * What kind of exercise is wanted.
 *
 * @param seed the same request and seed give the same exercise
 * @param families families to choose from, at least one
 * @param damage kinds of damage to choose from; empty for all that the family knows
 * @param difficulty 0 (plain) to 1 (near the limit of what can be distinguished), kept to hundredths
 * @param contrast what is to be distinguished
 */
public record GenerationRequest(
        long seed, List<ExerciseFamily> families, List<EventKind> damage, double difficulty, Contrast contrast) {

    /** Puts the lists in order and refuses a request that can't be met. */
    public GenerationRequest {
        families = families.stream().distinct().sorted().toList();
        damage = damage.stream().distinct().sorted().toList();
        difficulty = Math.rint(100 * difficulty) / 100;
        if (families.isEmpty()) {
            throw new IllegalArgumentException(
                    "families is empty; name at least one of " + List.of(ExerciseFamily.values()));
        }
        if (!(difficulty >= 0 && difficulty <= 1)) {
            throw new IllegalArgumentException("difficulty is " + difficulty + "; allowed is 0 to 1");
        }
        if (families.stream().noneMatch(contrast::isKnownTo)) {
            throw new IllegalArgumentException("contrast is " + contrast + ", which none of " + families
                    + " can have; those that can are "
                    + Arrays.stream(ExerciseFamily.values())
                            .filter(contrast::isKnownTo)
                            .toList());
        }
        for (EventKind kind : damage) {
            if (families.stream().noneMatch(family -> family.damage().contains(kind))) {
                throw new IllegalArgumentException("kind \"" + kind.id() + "\" is no damage of " + families
                        + "; those know "
                        + families.stream()
                                .flatMap(family -> family.damage().stream())
                                .distinct()
                                .map(EventKind::id)
                                .toList());
            }
        }
    }

    /**
     * Asks for no contrast.
     *
     * @param seed the seed
     * @param families families to choose from
     * @param damage kinds of damage to choose from
     * @param difficulty 0 to 1
     */
    public GenerationRequest(long seed, List<ExerciseFamily> families, List<EventKind> damage, double difficulty) {
        this(seed, families, damage, difficulty, Contrast.NONE);
    }

    /**
     * Asks for anything of some difficulty.
     *
     * @param seed the seed
     * @param difficulty 0 to 1
     * @return the request
     */
    public static GenerationRequest anything(long seed, double difficulty) {
        return new GenerationRequest(seed, List.of(ExerciseFamily.values()), List.of(), difficulty);
    }

    /**
     * Returns the name of the exercise that comes of the request. Neither the seed nor anything else can be read from it.
     *
     * @return {@code made-} and 16 letters and digits, the same for the same request
     */
    public String exerciseId() {
        return OpaqueId.of(this);
    }
}

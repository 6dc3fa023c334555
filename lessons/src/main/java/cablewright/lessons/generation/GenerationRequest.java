package cablewright.lessons.generation;

import cablewright.simulator.cable.EventKind;
import java.util.List;

/**
 * What kind of exercise is wanted.
 *
 * @param seed the same request and seed give the same exercise
 * @param families families to choose from, at least one
 * @param damage kinds of damage to choose from; empty for all that the family knows
 * @param difficulty 0 (plain) to 1 (near the limit of what can be told)
 */
public record GenerationRequest(long seed, List<ExerciseFamily> families, List<EventKind> damage, double difficulty) {

    /** Copies the lists and refuses a request that can't be met. */
    public GenerationRequest {
        families = List.copyOf(families);
        damage = List.copyOf(damage);
        if (families.isEmpty()) {
            throw new IllegalArgumentException(
                    "families is empty; name at least one of " + List.of(ExerciseFamily.values()));
        }
        if (!(difficulty >= 0 && difficulty <= 1)) {
            throw new IllegalArgumentException("difficulty is " + difficulty + "; allowed is 0 to 1");
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
     * Asks for anything of some difficulty.
     *
     * @param seed the seed
     * @param difficulty 0 to 1
     * @return the request
     */
    public static GenerationRequest anything(long seed, double difficulty) {
        return new GenerationRequest(seed, List.of(ExerciseFamily.values()), List.of(), difficulty);
    }
}

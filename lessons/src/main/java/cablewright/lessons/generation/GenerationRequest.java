// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.EventKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

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

    private static final int BASE = 36;

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
     * Returns the name of the exercise that comes of the request; the request can be recovered from it.
     *
     * @return {@code made-SEED-DIFFICULTY-FAMILIES-KINDS}, numbers in base 36, with a letter behind for a contrast
     */
    public String exerciseId() {
        long familyBits =
                families.stream().mapToLong(family -> 1L << family.ordinal()).reduce(0, (a, b) -> a | b);
        long kindBits = damage.stream().mapToLong(kind -> 1L << kind.ordinal()).reduce(0, (a, b) -> a | b);
        String name = String.join(
                "-",
                "made",
                Long.toUnsignedString(seed, BASE),
                Long.toString(Math.round(100 * difficulty), BASE),
                Long.toString(familyBits, BASE),
                Long.toString(kindBits, BASE));
        return contrast == Contrast.NONE ? name : name + "-" + contrast.letter();
    }

    /**
     * Recovers the request from the name of a generated exercise.
     *
     * @param exerciseId the exercise's name
     * @return the request; empty where the exercise was not made by a generator
     */
    public static Optional<GenerationRequest> ofExerciseId(String exerciseId) {
        String[] parts = exerciseId.split("-");
        if (parts.length < 5 || parts.length > 6 || !parts[0].equals("made")) {
            return Optional.empty();
        }
        try {
            long familyBits = Long.parseLong(parts[3], BASE);
            long kindBits = Long.parseLong(parts[4], BASE);
            return Optional.of(new GenerationRequest(
                    Long.parseUnsignedLong(parts[1], BASE),
                    chosen(ExerciseFamily.values(), familyBits),
                    chosen(EventKind.values(), kindBits),
                    Long.parseLong(parts[2], BASE) / 100.0,
                    Contrast.ofLetter(parts.length == 6 ? parts[5] : "")));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static <E extends Enum<E>> List<E> chosen(E[] values, long bits) {
        return new ArrayList<>(Arrays.stream(values)
                .filter(value -> (bits >> value.ordinal() & 1) == 1)
                .toList());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.EventKind;
import java.util.List;
import java.util.Optional;

/**
 * Reads the names that made exercises had before names were opaque: {@code made-SEED-DIFFICULTY-FAMILIES-KINDS} in base 36, with
 * a letter behind for a contrast. Only logs and answer files of that time hold such names.
 */
public final class ReadableId {

    private static final int BASE = 36;
    private static final int PARTS = 5;

    /** Families and kinds in the order which the bits of those names count; it stays as it was, whatever is added. */
    private static final List<ExerciseFamily> FAMILIES = List.of(
            ExerciseFamily.COAX_PLANT,
            ExerciseFamily.COAX_DROP,
            ExerciseFamily.TELEPHONE_LOOP,
            ExerciseFamily.DATA_CABLING,
            ExerciseFamily.BUILDING_WIRE,
            ExerciseFamily.REEL_ACCEPTANCE);

    private static final List<String> KINDS = List.of(
            ("splice connector corroded-joint tap splitter housing bridged-tap load-coil build-out cable-change end pinch "
                            + "water off-centre gradual-damage spread-pair unevenness heat open partial-open one-side-open "
                            + "short partial-short split element")
                    .split(" "));

    private ReadableId() {}

    /**
     * Reads the request from a name.
     *
     * @param exerciseId the exercise's name
     * @return the request; empty where the name is not of that form
     */
    public static Optional<GenerationRequest> request(String exerciseId) {
        String[] parts = exerciseId.split("-");
        if (parts.length < PARTS || parts.length > PARTS + 1 || !parts[0].equals("made")) {
            return Optional.empty();
        }
        try {
            return Optional.of(new GenerationRequest(
                    Long.parseUnsignedLong(parts[1], BASE),
                    chosen(FAMILIES, Long.parseLong(parts[3], BASE)),
                    chosen(KINDS, Long.parseLong(parts[4], BASE)).stream()
                            .map(EventKind::ofId)
                            .toList(),
                    Long.parseLong(parts[2], BASE) / 100.0,
                    contrast(parts.length > PARTS ? parts[PARTS] : "")));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Contrast contrast(String letter) {
        return switch (letter) {
            case "" -> Contrast.NONE;
            case "g" -> Contrast.GHOST_AND_EVENT;
            case "j" -> Contrast.SPLICE_AND_CONNECTOR;
            default -> throw new IllegalArgumentException("contrast is \"" + letter + "\"; allowed are g and j");
        };
    }

    private static <T> List<T> chosen(List<T> values, long bits) {
        return values.stream()
                .filter(value -> (bits >> values.indexOf(value) & 1) == 1)
                .toList();
    }
}

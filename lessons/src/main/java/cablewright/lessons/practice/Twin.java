// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.Outcome;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.EventKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The same fault on a new cable: what to ask after a miss, at once. */
public final class Twin {

    /** Share of the marks from which an answer is right, as for reviews. */
    private static final double RIGHT = 0.7;

    /** Rather plain: what was just missed is to be seen clearly (common practice, no source). */
    private static final double USUAL_DIFFICULTY = 0.3;

    private Twin() {}

    /**
     * Finds what was missed.
     *
     * @param record a marked attempt
     * @return kinds of damage that earned less than seven tenths of their marks, in the order of the cable
     */
    public static List<EventKind> missed(AttemptRecord record) {
        return record.outcomes().stream()
                .filter(outcome -> outcome.success() < RIGHT)
                .map(Outcome::kind)
                .filter(kind ->
                        families().stream().anyMatch(family -> family.damage().contains(kind)))
                .distinct()
                .toList();
    }

    private static List<ExerciseFamily> families() {
        return Arrays.asList(ExerciseFamily.values());
    }

    /**
     * Asks for a twin of an exercise.
     *
     * @param exercise the exercise
     * @param made the request of which it was made; empty for an exercise of a lesson
     * @param record how it was answered
     * @param seed seed of the twin
     * @return a request for the first missed kind on a cable of the same family; empty where nothing was missed that can be
     *     made
     */
    public static Optional<GenerationRequest> of(
            Exercise exercise, Optional<GenerationRequest> made, AttemptRecord record, long seed) {
        double difficulty = made.map(GenerationRequest::difficulty).orElse(USUAL_DIFFICULTY);
        return missed(record).stream()
                .findFirst()
                .map(kind -> new GenerationRequest(seed, families(exercise, made, kind), List.of(kind), difficulty));
    }

    /** Those of the exercise that know the kind; where its cable is of none of them, all that know the kind. */
    private static List<ExerciseFamily> families(Exercise exercise, Optional<GenerationRequest> made, EventKind kind) {
        String type = exercise.cable().runs().get(0).type().id();
        List<ExerciseFamily> able = families().stream()
                .filter(family -> family.damage().contains(kind))
                .toList();
        List<ExerciseFamily> alike = able.stream()
                .filter(family -> made.map(request -> request.families().contains(family)
                                && family.types().contains(type))
                        .orElseGet(() -> family.types().contains(type)))
                .toList();
        return alike.isEmpty() ? able : alike;
    }
}

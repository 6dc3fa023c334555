// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.draft;

import cablewright.lessons.exercise.Attempt;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Settings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What was done in one exercise and not handed in.
 *
 * @param lessonId the lesson
 * @param exerciseId the exercise
 * @param flags the flags, each with a letter of its own, at most 200
 * @param settings what is set on the instrument
 * @param end the end to which it is joined
 * @param hintsTaken how many hints were taken, 0 to 10
 * @param choiceId the answer chosen before the trace was shown
 * @param reasonId the reason chosen with it
 * @param startedAt when the exercise was opened
 */
public record ExerciseDraft(
        @Id String lessonId,
        @Id String exerciseId,
        @Entries(most = Attempt.MOST_FLAGS) List<FlagSketch> flags,
        Settings settings,
        LineEnd end,
        @Between(least = 0, most = 10) int hintsTaken,
        @Id Optional<String> choiceId,
        @Id Optional<String> reasonId,
        Optional<Instant> startedAt) {

    /** Copies the list and checks the ranges. */
    public ExerciseDraft {
        Require.components(
                ExerciseDraft.class,
                lessonId,
                exerciseId,
                flags,
                settings,
                end,
                hintsTaken,
                choiceId,
                reasonId,
                startedAt);
        flags = List.copyOf(flags);
        Require.distinct("flags", flags, FlagSketch::letter);
    }

    /**
     * Returns whether anything would be lost without it.
     *
     * @return whether there is a flag, an answer or a hint that was taken
     */
    public boolean isWorthKeeping() {
        return !flags.isEmpty() || choiceId.isPresent() || hintsTaken > 0;
    }

    /**
     * Returns whether it belongs to an exercise.
     *
     * @param lesson the lesson's name
     * @param exercise the exercise's name
     * @return whether both names agree
     */
    public boolean isOf(String lesson, String exercise) {
        return lessonId.equals(lesson) && exerciseId.equals(exercise);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Matches;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import cablewright.simulator.instrument.Settings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What a trainee hands in for one exercise.
 *
 * @param exerciseId the exercise
 * @param trainee who hands it in, free text of one line
 * @param flags the flags, at most 200, each with a letter of its own
 * @param settings what was set when it was handed in
 * @param hintsTaken how many hints were taken, 0 to 10
 * @param predictedChoiceId the answer chosen before the trace was shown; absent where none was
 * @param predictedReasonId the reason chosen with it; absent where none was
 * @param startedAt when the exercise was opened
 * @param committedAt when it was handed in
 * @param exerciseSha256 fingerprint of the exercise that was answered, so that answers to another exercise of the same name are
 *     noticed; absent in older files and in exams, where the whole paper has one
 */
public record Attempt(
        @Id String exerciseId,
        @Text String trainee,
        @Entries(most = Attempt.MOST_FLAGS) List<Flag> flags,
        Settings settings,
        @Between(least = 0, most = 10) int hintsTaken,
        @Id Optional<String> predictedChoiceId,
        @Id Optional<String> predictedReasonId,
        Optional<Instant> startedAt,
        Optional<Instant> committedAt,
        @Matches(pattern = "[0-9a-f]{64}", words = "64 hexadecimal digits in small letters")
                Optional<String> exerciseSha256) {

    /** Most flags of one attempt. */
    public static final int MOST_FLAGS = 200;

    /** Copies the list and checks the ranges. */
    public Attempt {
        Require.components(
                Attempt.class,
                exerciseId,
                trainee,
                flags,
                settings,
                hintsTaken,
                predictedChoiceId,
                predictedReasonId,
                startedAt,
                committedAt,
                exerciseSha256);
        flags = List.copyOf(flags);
        Require.distinct("flags", flags, Flag::letter);
    }

    /**
     * Makes an attempt that does not say which exercise of its name it answers.
     *
     * @param exerciseId the exercise
     * @param trainee who hands it in
     * @param flags the flags
     * @param settings what was set
     * @param hintsTaken how many hints were taken
     * @param predictedChoiceId the answer chosen before the trace was shown
     * @param predictedReasonId the reason chosen with it
     * @param startedAt when the exercise was opened
     * @param committedAt when it was handed in
     */
    public Attempt(
            String exerciseId,
            String trainee,
            List<Flag> flags,
            Settings settings,
            int hintsTaken,
            Optional<String> predictedChoiceId,
            Optional<String> predictedReasonId,
            Optional<Instant> startedAt,
            Optional<Instant> committedAt) {
        this(
                exerciseId,
                trainee,
                flags,
                settings,
                hintsTaken,
                predictedChoiceId,
                predictedReasonId,
                startedAt,
                committedAt,
                Optional.empty());
    }

    /**
     * Binds the attempt to an exercise.
     *
     * @param sha256 fingerprint of the exercise
     * @return an attempt alike but for it
     */
    public Attempt boundTo(String sha256) {
        return new Attempt(
                exerciseId,
                trainee,
                flags,
                settings,
                hintsTaken,
                predictedChoiceId,
                predictedReasonId,
                startedAt,
                committedAt,
                Optional.of(sha256));
    }

    /**
     * Makes an attempt with no hint, no prediction and no times.
     *
     * @param exerciseId the exercise
     * @param trainee who hands it in
     * @param flags the flags
     * @param settings what was set
     */
    public Attempt(String exerciseId, String trainee, List<Flag> flags, Settings settings) {
        this(
                exerciseId,
                trainee,
                flags,
                settings,
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}

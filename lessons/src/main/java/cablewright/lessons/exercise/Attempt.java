// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
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
        Optional<Instant> committedAt) {

    /** Most flags of one attempt. */
    public static final int MOST_FLAGS = 200;

    /** Copies the list and refuses values that can't be. */
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
                committedAt);
        flags = List.copyOf(flags);
        Require.distinct("flags", flags, Flag::letter);
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

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

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
        String exerciseId,
        String trainee,
        List<Flag> flags,
        Settings settings,
        int hintsTaken,
        Optional<String> predictedChoiceId,
        Optional<String> predictedReasonId,
        Optional<Instant> startedAt,
        Optional<Instant> committedAt) {

    /** Most flags of one attempt. */
    public static final int MOST_FLAGS = 200;

    /** Copies the list and refuses values that can't be. */
    public Attempt {
        Require.id("exerciseId", exerciseId);
        Require.line("trainee", trainee);
        flags = Require.list("flags", flags, 0, MOST_FLAGS);
        Require.distinct("flags", flags, Flag::letter);
        Require.present("settings", settings);
        Require.between("hintsTaken", hintsTaken, 0, 10);
        Require.present("predictedChoiceId", predictedChoiceId);
        predictedChoiceId.ifPresent(id -> Require.id("predictedChoiceId", id));
        Require.present("predictedReasonId", predictedReasonId);
        predictedReasonId.ifPresent(id -> Require.id("predictedReasonId", id));
        Require.present("startedAt", startedAt);
        Require.present("committedAt", committedAt);
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

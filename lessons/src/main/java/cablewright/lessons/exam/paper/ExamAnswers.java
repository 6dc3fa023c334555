// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.lessons.exercise.Attempt;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Matches;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What one person answered: while the sitting runs it is kept on the trainee's machine, handed in it is sealed.
 *
 * @param paperSha256 SHA-256 of the paper's file, 64 hexadecimal digits
 * @param trainee who, free text of one line
 * @param sittingId drawn when the sitting began; the same in every file of one sitting
 * @param startedAt when it began, by the machine's clock
 * @param savedAt when this was written, by the machine's clock
 * @param handedInAt when it was handed in, by the machine's clock; absent while the sitting runs
 * @param secondsUsed time that counts, by a clock that can't be put back within a run [s]
 * @param runs how many times the program was started for it
 * @param clockJumpSeconds by how much the machine's clock went wrong against that, added up without sign [s]
 * @param attempts flags, settings and answers for each item that was opened; {@code exerciseId} is the item's name
 */
public record ExamAnswers(
        @Matches(pattern = "[0-9a-f]{64}", words = "64 hexadecimal digits in small letters") String paperSha256,
        @Text String trainee,
        @Id String sittingId,
        Instant startedAt,
        Instant savedAt,
        Optional<Instant> handedInAt,
        @Between(least = 0, most = ExamAnswers.MOST_SECONDS) double secondsUsed,
        @Between(least = 1, most = 1_000_000) int runs,
        @Between(least = 0, most = ExamAnswers.MOST_SECONDS) double clockJumpSeconds,
        @Entries(most = SealedPaper.MOST_ITEMS) List<Attempt> attempts) {

    static final double MOST_SECONDS = 1e9;

    /** Copies the list and checks the ranges. */
    public ExamAnswers {
        Require.components(
                ExamAnswers.class,
                paperSha256,
                trainee,
                sittingId,
                startedAt,
                savedAt,
                handedInAt,
                secondsUsed,
                runs,
                clockJumpSeconds,
                attempts);
        attempts = List.copyOf(attempts);
        Require.distinct("attempts", attempts, Attempt::exerciseId);
    }

    /**
     * Finds the answer to an item.
     *
     * @param itemId the item
     * @return the answer, if the item was opened
     */
    public Optional<Attempt> attempt(String itemId) {
        return attempts.stream()
                .filter(attempt -> attempt.exerciseId().equals(itemId))
                .findFirst();
    }
}

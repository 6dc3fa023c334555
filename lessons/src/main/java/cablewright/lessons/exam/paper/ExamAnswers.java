// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.lessons.exercise.Attempt;
import cablewright.simulator.check.Require;
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
        String paperSha256,
        String trainee,
        String sittingId,
        Instant startedAt,
        Instant savedAt,
        Optional<Instant> handedInAt,
        double secondsUsed,
        int runs,
        double clockJumpSeconds,
        List<Attempt> attempts) {

    private static final double MOST_SECONDS = 1e9;

    /** Copies the list and checks the ranges. */
    public ExamAnswers {
        if (paperSha256 == null || !paperSha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("paperSha256 is not 64 hexadecimal digits in small letters");
        }
        Require.text("trainee", trainee);
        Require.id(sittingId);
        Require.present("startedAt", startedAt);
        Require.present("savedAt", savedAt);
        Require.present("handedInAt", handedInAt);
        Require.between("secondsUsed", secondsUsed, 0, MOST_SECONDS);
        Require.between("runs", runs, 1, 1_000_000);
        Require.between("clockJumpSeconds", clockJumpSeconds, 0, MOST_SECONDS);
        attempts = List.copyOf(Require.present("attempts", attempts));
        Require.between("attempts", attempts.size(), 0, SealedPaper.MOST_ITEMS);
        if (attempts.stream().map(Attempt::exerciseId).distinct().count() != attempts.size()) {
            throw new IllegalArgumentException("attempts has an item twice; each item has one attempt");
        }
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

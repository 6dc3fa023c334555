// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import java.util.List;
import java.util.Optional;

/**
 * A question that is asked before the trace is shown.
 *
 * @param question the question, in Markdown
 * @param choices 2 to 8 answers
 * @param reasons reasons of which one is chosen with the answer; none where the answer alone counts
 */
public record PaperQuestion(
        @Lines String question,
        @Entries(least = 2, most = 8) List<PaperChoice> choices,
        @Entries(most = 8) List<PaperChoice> reasons) {

    /** Copies the lists and checks how many there are. */
    public PaperQuestion {
        Require.components(PaperQuestion.class, question, choices, reasons);
        choices = List.copyOf(choices);
        reasons = List.copyOf(reasons);
    }

    /**
     * Returns whether the question is answered by one of its answers, and one of its reasons where it has some.
     *
     * @param choiceId the answer
     * @param reasonId the reason
     * @return whether both are choices of this question
     */
    public boolean isAnswer(String choiceId, Optional<String> reasonId) {
        boolean isReasoned = reasons.isEmpty()
                ? reasonId.isEmpty()
                : reasonId.filter(id -> has(reasons, id)).isPresent();
        return has(choices, choiceId) && isReasoned;
    }

    private static boolean has(List<PaperChoice> all, String id) {
        return all.stream().anyMatch(choice -> choice.id().equals(id));
    }
}

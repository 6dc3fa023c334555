// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.lessons.exercise.Lines;
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
public record PaperQuestion(@Lines String question, List<PaperChoice> choices, List<PaperChoice> reasons) {

    private static final int MOST_CHOICES = 8;

    /** Copies the lists and checks how many there are. */
    public PaperQuestion {
        Require.present("question", question);
        choices = List.copyOf(Require.present("choices", choices));
        reasons = List.copyOf(Require.present("reasons", reasons));
        Require.between("choices", choices.size(), 2, MOST_CHOICES);
        Require.between("reasons", reasons.size(), 0, MOST_CHOICES);
    }

    /**
     * Tells whether the question is answered by one of its answers, and one of its reasons where it has some.
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

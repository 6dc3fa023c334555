// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.question;

import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import java.util.List;
import java.util.Optional;

/**
 * A question that is asked before the trace is shown.
 *
 * @param question the question, in Markdown
 * @param choices 2 to 8 answers
 * @param correctChoiceId id of the right one
 * @param reasons reasons of which one is chosen with the answer; empty where the answer alone counts
 * @param explanation shown after commit, in Markdown
 */
public record Prediction(
        @Lines String question,
        @Entries(least = 2, most = 8) List<Choice> choices,
        @Id String correctChoiceId,
        Optional<Reasons> reasons,
        @Lines String explanation) {

    /** Copies the list and refuses a question that can't be answered. */
    public Prediction {
        Require.components(Prediction.class, question, choices, correctChoiceId, reasons, explanation);
        choices = List.copyOf(choices);
        Choice.requireOneRight(choices, correctChoiceId);
    }

    /**
     * Asks for an answer alone.
     *
     * @param question the question, in Markdown
     * @param choices 2 to 8 answers
     * @param correctChoiceId id of the right one
     * @param explanation shown after commit, in Markdown
     */
    public Prediction(String question, List<Choice> choices, String correctChoiceId, String explanation) {
        this(question, choices, correctChoiceId, Optional.empty(), explanation);
    }

    /**
     * Returns whether the question is answered: by one of its answers, and one of its reasons where it has some.
     *
     * @param choiceId the answer
     * @param reasonId the reason
     * @return whether both are choices of this question
     */
    public boolean isAnswer(String choiceId, Optional<String> reasonId) {
        boolean isReasoned = reasons.isEmpty()
                ? reasonId.isEmpty()
                : reasonId.flatMap(reasons.get()::choice).isPresent();
        return choice(choiceId).isPresent() && isReasoned;
    }

    /**
     * Finds an answer by its name.
     *
     * @param id the answer's name
     * @return the answer, if the question has it
     */
    public Optional<Choice> choice(String id) {
        return Choice.among(choices, id);
    }
}

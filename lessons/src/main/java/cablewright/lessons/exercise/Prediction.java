package cablewright.lessons.exercise;

import java.util.List;
import java.util.Optional;

/**
 * A question that is asked before the trace is shown.
 *
 * @param question the question, in Markdown
 * @param choices 2 to 8 answers
 * @param correctChoiceId id of the right one
 * @param explanation shown after commit, in Markdown
 */
public record Prediction(
        @Lines String question, List<Choice> choices, String correctChoiceId, @Lines String explanation) {

    /** Copies the list and refuses a question that can't be answered. */
    public Prediction {
        Require.text("question", question);
        choices = Require.list("choices", choices, 2, 8);
        Require.distinct("choices", choices, Choice::id);
        Require.id("correctChoiceId", correctChoiceId);
        Require.text("explanation", explanation);
        if (find(choices, correctChoiceId).isEmpty()) {
            throw new IllegalArgumentException("correctChoiceId is \"" + correctChoiceId + "\"; allowed are "
                    + String.join(", ", choices.stream().map(Choice::id).toList()));
        }
    }

    private static Optional<Choice> find(List<Choice> choices, String id) {
        return choices.stream().filter(choice -> choice.id().equals(id)).findFirst();
    }

    /**
     * Finds an answer by its name.
     *
     * @param id the answer's name
     * @return the answer, if the question has it
     */
    public Optional<Choice> choice(String id) {
        return find(choices, id);
    }
}

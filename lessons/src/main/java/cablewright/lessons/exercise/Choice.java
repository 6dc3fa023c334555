// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import java.util.List;
import java.util.Optional;

/**
 * One answer that a trainee may choose.
 *
 * @param id name within its question
 * @param text the answer, one line
 * @param reason shown after commit: why it is right, or where the thought goes wrong
 */
public record Choice(String id, String text, @Lines String reason) {

    /** Refuses values that can't be. */
    public Choice {
        Require.id("id", id);
        Require.line("text", text);
        Require.text("reason", reason);
    }

    static Optional<Choice> among(List<Choice> choices, String id) {
        return choices.stream().filter(choice -> choice.id().equals(id)).findFirst();
    }

    /** Copies 2 to 8 choices of which one is right, or refuses them. */
    static List<Choice> withOneRight(List<Choice> choices, String correctChoiceId) {
        List<Choice> copy = Require.list("choices", choices, 2, 8);
        Require.distinct("choices", copy, Choice::id);
        Require.id("correctChoiceId", correctChoiceId);
        if (among(copy, correctChoiceId).isEmpty()) {
            throw new IllegalArgumentException("correctChoiceId is \"" + correctChoiceId + "\"; allowed are "
                    + String.join(", ", copy.stream().map(Choice::id).toList()));
        }
        return copy;
    }
}

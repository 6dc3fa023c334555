// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.question;

import cablewright.simulator.check.Id;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.util.List;
import java.util.Optional;

/**
 * One answer that a trainee may choose.
 *
 * @param id name within its question
 * @param text the answer, one line
 * @param reason shown after commit: why it is right, or where the thought goes wrong
 */
public record Choice(@Id String id, @Text String text, @Lines String reason) {

    /** Checks the ranges. */
    public Choice {
        Require.components(Choice.class, id, text, reason);
    }

    static Optional<Choice> among(List<Choice> choices, String id) {
        return choices.stream().filter(choice -> choice.id().equals(id)).findFirst();
    }

    /** Checks that every choice has an id of its own and that one of them is right. */
    static void requireOneRight(List<Choice> choices, String correctChoiceId) {
        Require.distinct("choices", choices, Choice::id);
        if (among(choices, correctChoiceId).isEmpty()) {
            throw new IllegalArgumentException("correctChoiceId is \"" + correctChoiceId + "\"; allowed is "
                    + String.join(", ", choices.stream().map(Choice::id).toList()));
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.question;

import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import java.util.List;
import java.util.Optional;

/**
 * Reasons to choose from beside the answer of a {@link Prediction}. An answer may be right by luck; with its reason it
 * shows what is understood (two-tier items: Treagust, "Development and use of diagnostic tests to evaluate students'
 * misconceptions in science", International Journal of Science Education 10(2), 1988; from memory).
 *
 * @param choices 2 to 8 reasons
 * @param correctChoiceId id of the right one
 */
public record Reasons(@Entries(least = 2, most = 8) List<Choice> choices, @Id String correctChoiceId) {

    /** Copies the list and refuses reasons of which none is right. */
    public Reasons {
        Require.components(Reasons.class, choices, correctChoiceId);
        choices = List.copyOf(choices);
        Choice.requireOneRight(choices, correctChoiceId);
    }

    /**
     * Finds a reason by its name.
     *
     * @param id the reason's name
     * @return the reason, if there is one of that name
     */
    public Optional<Choice> choice(String id) {
        return Choice.among(choices, id);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

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
public record Reasons(List<Choice> choices, String correctChoiceId) {

    /** Copies the list and refuses reasons of which none is right. */
    public Reasons {
        choices = Choice.withOneRight(choices, correctChoiceId);
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

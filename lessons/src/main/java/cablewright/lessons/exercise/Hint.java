// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

/**
 * A hint. Hints are given in order.
 *
 * @param text what it says, in Markdown
 * @param costMarks marks that taking it costs, 0 to 100
 */
public record Hint(@Lines String text, double costMarks) {

    /** Refuses values that can't be. */
    public Hint {
        Require.text("text", text);
        Require.between("costMarks", costMarks, 0, 100);
    }
}

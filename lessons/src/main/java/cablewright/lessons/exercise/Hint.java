// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;

/**
 * A hint. Hints are given in order.
 *
 * @param text what it says, in Markdown
 * @param costMarks marks that taking it costs, 0 to 100
 */
public record Hint(@Lines String text, @Between(least = 0, most = 100) double costMarks) {

    /** Checks the ranges. */
    public Hint {
        Require.components(Hint.class, text, costMarks);
    }
}

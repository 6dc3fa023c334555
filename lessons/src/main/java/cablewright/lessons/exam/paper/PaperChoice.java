// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;

/**
 * One answer that a trainee may choose. Which is right stays sealed.
 *
 * @param id name within its question; drawn anew for each paper
 * @param text the answer, one line
 */
public record PaperChoice(@Id String id, @Text String text) {

    /** Checks the name and the text. */
    public PaperChoice {
        Require.components(PaperChoice.class, id, text);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.simulator.check.Require;

/**
 * One answer that a trainee may choose. Which is right stays sealed.
 *
 * @param id name within its question; drawn anew for each paper
 * @param text the answer, one line
 */
public record PaperChoice(String id, String text) {

    /** Checks the name and the text. */
    public PaperChoice {
        Require.id(id);
        Require.text("text", text);
    }
}

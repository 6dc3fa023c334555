// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.form;

/**
 * What a page says after an action.
 *
 * @param sentence the sentence; nothing where it is empty
 * @param isFault whether it says what went wrong
 */
public record Said(String sentence, boolean isFault) {

    /** Nothing to say. */
    public static final Said NOTHING = new Said("", false);

    /**
     * Says what was done.
     *
     * @param sentence one sentence
     * @return news
     */
    public static Said news(String sentence) {
        return new Said(sentence, false);
    }

    /**
     * Says what went wrong.
     *
     * @param sentence what, and what to do
     * @return a fault
     */
    public static Said fault(String sentence) {
        return new Said(sentence, true);
    }
}

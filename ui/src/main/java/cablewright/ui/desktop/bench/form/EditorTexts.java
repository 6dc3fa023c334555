// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.ui.words.Texts;

/** The sentences of the Bench's editors. */
public final class EditorTexts {

    /** Name of the bundle that holds them. */
    public static final String BUNDLE = "cablewright.ui.desktop.bench.editors";

    private EditorTexts() {}

    /**
     * Opens the sentences.
     *
     * @return the texts
     */
    public static Texts open() {
        return new Texts(BUNDLE);
    }
}

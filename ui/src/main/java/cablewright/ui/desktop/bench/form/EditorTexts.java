// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.text.Texts;
import java.util.Locale;

/** The sentences of the Bench's editors. */
public final class EditorTexts {

    /** Name of the bundle that holds them. */
    public static final String BUNDLE = "cablewright.ui.desktop.bench.editors";

    private EditorTexts() {}

    /**
     * Opens the sentences.
     *
     * @param locale the language
     * @return the texts
     */
    public static Texts open(Locale locale) {
        return new Texts(BUNDLE, locale);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.text.Texts;
import cablewright.ui.commandline.option.RootCommand;

/** The sentences of these commands, in the language of the terminal. */
final class ExamTexts {

    static final String BUNDLE = "cablewright.ui.commandline.exam.exam";

    private ExamTexts() {}

    static Texts of(RootCommand root) {
        return new Texts(BUNDLE, root.surroundings().locale());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.text.Texts;

/** What was typed cannot be done; the sentence is made where the language is known. */
final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String key;
    private final transient Object[] arguments;

    Refused(String key, Object... arguments) {
        super(key);
        this.key = key;
        this.arguments = arguments.clone();
    }

    String sentence(Texts texts) {
        return texts.say("refused." + key, arguments);
    }
}

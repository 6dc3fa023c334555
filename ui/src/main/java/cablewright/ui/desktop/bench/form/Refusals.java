// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.text.Texts;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts what the document refuses into words: names of components become what people call them. */
public final class Refusals {

    private static final Pattern COMPONENT = Pattern.compile("\\b[a-z]+(?:[A-Z][a-z]+)+\\b");
    private static final String PREFIX = "component.";

    private final Texts texts;

    /**
     * Makes it.
     *
     * @param texts the sentences of the editors
     */
    public Refusals(Texts texts) {
        this.texts = texts;
    }

    /**
     * Writes a refusal.
     *
     * @param message the message of the value that refused
     * @return the message in words
     */
    public String tell(String message) {
        Matcher names = COMPONENT.matcher(message);
        StringBuilder said = new StringBuilder();
        while (names.find()) {
            String key = PREFIX + names.group();
            names.appendReplacement(
                    said, Matcher.quoteReplacement(texts.keys().contains(key) ? texts.say(key) : names.group()));
        }
        String sentence = names.appendTail(said).toString();
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.text.QuantityMark;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import java.util.Locale;

/** What the Bench writes into a document, in one language. */
public final class BenchTexts {

    private static final String BUNDLE = "cablewright.lessons.bench.bench";

    private final Texts texts;

    /**
     * Opens the sentences.
     *
     * @param locale the language
     */
    public BenchTexts(Locale locale) {
        this.texts = new Texts(BUNDLE, locale);
    }

    /**
     * Makes a sentence.
     *
     * @param key its key
     * @param arguments what its places take
     * @return the sentence
     */
    public String say(String key, Object... arguments) {
        return texts.say(key, arguments);
    }

    /**
     * Names a kind of event.
     *
     * @param kind the kind
     * @return such as "bridged tap"
     */
    public String kind(EventKind kind) {
        return texts.sibling(Texts.KINDS).say(kind.id());
    }

    /**
     * Marks a length, which readers see in their own unit.
     *
     * @param metres the length [m]
     * @param digits digits after the point
     * @return the marked length
     */
    public static String length(double metres, int digits) {
        return QuantityMark.of(metres, digits);
    }
}

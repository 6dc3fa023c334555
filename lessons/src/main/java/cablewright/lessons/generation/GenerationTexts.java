// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.lessons.text.QuantityMark;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import java.util.Locale;

/** The sentences of generated exercises in one language. */
final class GenerationTexts {

    private static final String BUNDLE = "cablewright.lessons.generation.generation";

    private final Texts texts;

    GenerationTexts(Locale locale) {
        this.texts = new Texts(BUNDLE, locale);
    }

    String say(String key, Object... arguments) {
        return texts.say(key, arguments);
    }

    /** The name of a kind of event. */
    String kind(EventKind kind) {
        return texts.sibling(Texts.KINDS).say(kind.id());
    }

    /** A value's name in lower case with hyphens, as it ends a key. */
    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How many variants of a sentence there are: {@code key.0}, {@code key.1} and so on. */
    int variants(String key) {
        int count = 0;
        while (texts.has(key + "." + count)) {
            count++;
        }
        return count;
    }

    /** Draws one of the variants of a sentence. */
    String drawn(SeededRandom dice, String key, Object... arguments) {
        return say(key + "." + dice.upTo(variants(key) - 1), arguments);
    }

    /** A length that readers see in their own unit, to the tenth of a metre. */
    static String tenths(double metres) {
        return QuantityMark.of(metres, 1);
    }

    /** A length that readers see in their own unit, to the metre. */
    static String whole(double metres) {
        return QuantityMark.of(metres, 0);
    }

    static String number(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }
}

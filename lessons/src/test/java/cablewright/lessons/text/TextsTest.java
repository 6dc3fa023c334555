// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;

/** Plural forms are those of the Unicode CLDR, "Language Plural Rules", cardinal rules of English and Polish. */
class TextsTest {

    private static final String BUNDLE = "cablewright.lessons.text.harbour";
    private static final Locale POLISH = Locale.forLanguageTag("pl");

    private final Texts english = new Texts(BUNDLE, Locale.ROOT);

    @Test
    void aPluralFollowsItsNumber() {
        assertEquals("A dig costs 1 mark; it's the owner's.", english.say("costs", "A dig", 1));
        assertEquals("A dig costs 2 marks; it's the owner's.", english.say("costs", "A dig", 2));
        assertEquals("A dig costs 0.5 marks; it's the owner's.", english.say("costs", "A dig", 0.5));
    }

    @Test
    void anotherLanguageHasItsOwnPluralForms() {
        Texts polish = new Texts(BUNDLE, POLISH);
        assertEquals("X kosztuje 1 punkt.", polish.say("costs", "X", 1));
        assertEquals("X kosztuje 3 punkty.", polish.say("costs", "X", 3));
        assertEquals("X kosztuje 5 punktów.", polish.say("costs", "X", 5));
    }

    @Test
    void whatALanguageLacksIsSaidInEnglish() {
        assertEquals("only here", new Texts(BUNDLE, POLISH).say("english"));
    }

    @Test
    void aLanguageWithoutAFileIsEnglishEvenOnAMachineOfAThirdLanguage() {
        Locale before = Locale.getDefault();
        Locale.setDefault(POLISH);
        try {
            assertEquals(
                    "A dig costs 1 mark; it's the owner's.",
                    new Texts(BUNDLE, Locale.JAPANESE).say("costs", "A dig", 1));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aMissingArgumentOrKeyIsRefused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> english.say("costs", "A dig"));
        assertTrue(refused.getMessage().contains("\"costs\""), refused.getMessage());
        assertThrows(MissingResourceException.class, () -> english.say("absent"));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.DocumentChange;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.bench.field.ChoiceField;
import cablewright.lessons.bench.field.EventField;
import cablewright.lessons.bench.field.EventFields;
import cablewright.lessons.bench.field.NumberField;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.desktop.bench.BenchView;
import cablewright.ui.desktop.bench.model.InsertWords;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever can be put on a cable has a name, a letter, and words for each of its numbers and choices. */
class BenchWordsTest {

    private final Texts texts = new Texts(BenchView.BUNDLE, Locale.ROOT);
    private final Words words = Words.in(LengthUnit.METRES, Locale.ROOT);
    private final InsertWords names = new InsertWords(words, texts);

    /** A cable that can carry the thing, with it. */
    private static Cable with(Insertable what) {
        String type =
                Insertable.on(Catalogue.standard().type("drop-6-foam")).contains(what) ? "drop-6-foam" : "pair-24";
        Cable plain =
                new Cable("Quay", List.of(new Run(Catalogue.standard().type(type), 100)), List.of(), new FarEnd.Open());
        return what.putOn(plain, 40, 1);
    }

    @ParameterizedTest
    @EnumSource(Insertable.class)
    void everyFieldOfEveryThingHasItsWords(Insertable what) {
        assertFalse(names.name(what).isBlank());
        Cable cable = with(what);
        Event event = cable.events().get(0);
        for (EventField field : EventFields.of(cable, event)) {
            assertFalse(texts.say("field." + field.key()).isBlank());
            if (field instanceof ChoiceField choiceField) {
                for (String choice : choiceField.choices()) {
                    boolean isPicture = field.key().equals("picture");
                    assertFalse((isPicture ? words.texts().say("picture." + choice) : texts.say("choice." + choice))
                            .isBlank());
                }
            } else if (((NumberField) field).mayBeAbsent()) {
                assertFalse(texts.say("absent." + field.key()).isBlank());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Insertable.class)
    void everyDialReadsBackWhatItWrites(Insertable what) {
        Cable cable = with(what);
        int dials = 0;
        for (EventField field : EventFields.of(cable, cable.events().get(0))) {
            if (field instanceof NumberField numberField && numberField.value().isPresent()) {
                dials++;
                Dial dial = Dial.of(numberField);
                for (LengthUnit length : LengthUnit.values()) {
                    DialUnit unit = DialUnit.of(dial, length);
                    double value = dial.value().getAsDouble();
                    double read = unit.parse(unit.text(value), dial, texts);
                    assertEquals(value, read, 0.006 * Math.max(Math.abs(value), unit.inSi()), field.key());
                }
                for (double place : new double[] {0, 0.3, 1}) {
                    assertTrue(dial.allowed().contains(dial.at(place)), field.key() + " at " + place);
                }
            }
        }
        assertTrue(dials > 0, "no dial of " + what);
    }

    @ParameterizedTest
    @ValueSource(strings = {"drop-6-foam", "pair-24"})
    void everyLetterStandsForOneThingOnACable(String id) {
        CableType type = Catalogue.standard().type(id);
        Set<String> letters = new HashSet<>();
        for (Insertable one : Insertable.on(type)) {
            assertEquals(1, names.letter(one).length(), one + " has a letter");
            assertTrue(letters.add(names.letter(one)), one + " has a letter of its own");
            assertEquals(one, names.ofLetter(names.letter(one), type).orElseThrow());
        }
    }

    @Test
    void everyChangeHasItsWords() {
        Arrays.stream(DocumentChange.What.values())
                .map(what -> what.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .forEach(word ->
                        assertFalse(texts.say("change." + word, "a", "b").isBlank()));
    }
}

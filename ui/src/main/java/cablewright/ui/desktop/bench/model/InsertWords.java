// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.line.CableType;
import cablewright.ui.words.Words;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What things that can be put on a cable are called, and the letter that puts each there. */
public final class InsertWords {

    private static final Map<Insertable, String> LETTERS = letters();

    private final Words words;
    private final Texts texts;

    public InsertWords(Words words, Texts texts) {
        this.words = words;
        this.texts = texts;
    }

    /** Each letter stands for one thing on a coax and for one on a pair; a test says which thing has none. */
    private static Map<Insertable, String> letters() {
        Map<Insertable, String> letters = new EnumMap<>(Insertable.class);
        letters.put(Insertable.SPLICE, "S");
        letters.put(Insertable.CONNECTOR, "C");
        letters.put(Insertable.TAP, "T");
        letters.put(Insertable.SPLITTER, "L");
        letters.put(Insertable.HOUSING, "A");
        letters.put(Insertable.BRIDGED_TAP, "B");
        letters.put(Insertable.LOAD_COIL, "K");
        letters.put(Insertable.BUILD_OUT, "D");
        letters.put(Insertable.SERIES_ELEMENT, "E");
        letters.put(Insertable.SHUNT_ELEMENT, "F");
        letters.put(Insertable.PINCH, "P");
        letters.put(Insertable.KINK, "N");
        letters.put(Insertable.WATER, "W");
        letters.put(Insertable.CORRODED_JOINT, "R");
        letters.put(Insertable.PARTIAL_OPEN, "J");
        letters.put(Insertable.PARTIAL_SHORT, "Y");
        letters.put(Insertable.OPEN, "O");
        letters.put(Insertable.SHORT, "X");
        letters.put(Insertable.ONE_SIDE_OPEN, "I");
        letters.put(Insertable.ONE_SIDE_EARTHED, "Q");
        letters.put(Insertable.CROSS, "T");
        letters.put(Insertable.SPREAD_PAIR, "V");
        letters.put(Insertable.SPLIT, "M");
        letters.put(Insertable.OFF_CENTRE, "Z");
        letters.put(Insertable.GRADUAL_DAMAGE, "G");
        letters.put(Insertable.UNEVENNESS, "U");
        letters.put(Insertable.HEAT, "H");
        return letters;
    }

    /**
     * Names a thing.
     *
     * @param what the thing
     * @return such as "bridged tap"
     */
    public String name(Insertable what) {
        boolean named = what.kind() == EventKind.ELEMENT || what == Insertable.KINK;
        return named ? texts.say("insert." + what.word()) : words.kind(what.kind());
    }

    /**
     * Returns the letter that puts it on the cable, after the key that asks for one.
     *
     * @param what the thing
     * @return one capital letter; nothing where it has none
     */
    public String letter(Insertable what) {
        return LETTERS.getOrDefault(what, "");
    }

    /**
     * Finds what a letter stands for.
     *
     * @param letter what was typed
     * @param type the cable
     * @return the thing; empty where the letter stands for nothing
     */
    public Optional<Insertable> ofLetter(String letter, CableType type) {
        return Insertable.on(type).stream()
                .filter(what -> letter(what).equalsIgnoreCase(letter))
                .findFirst();
    }
}

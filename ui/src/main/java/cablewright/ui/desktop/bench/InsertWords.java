package cablewright.ui.desktop.bench;

import cablewright.lessons.bench.Insertable;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.words.Texts;
import cablewright.ui.words.Words;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What things that can be put on a cable are called, and the letter that puts each there. */
public final class InsertWords {

    /** Letters in the order of the things; each stands once. */
    private static final String LETTERS = "SCTLABKDEFPNWRJYOXIVMZGUH";

    private static final Map<Insertable, Character> LETTER = letters();

    private final Words words;
    private final Texts texts;

    InsertWords(Words words, Texts texts) {
        this.words = words;
        this.texts = texts;
    }

    private static Map<Insertable, Character> letters() {
        Map<Insertable, Character> letters = new EnumMap<>(Insertable.class);
        for (Insertable one : Insertable.values()) {
            letters.put(one, LETTERS.charAt(one.ordinal()));
        }
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
     * @return one capital letter
     */
    public String letter(Insertable what) {
        return LETTER.get(what).toString();
    }

    /**
     * Finds what a letter stands for.
     *
     * @param letter what was typed
     * @return the thing; empty where the letter stands for nothing
     */
    public Optional<Insertable> ofLetter(String letter) {
        return LETTER.entrySet().stream()
                .filter(entry -> entry.getValue().toString().equalsIgnoreCase(letter))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.wave.Stimulus;
import java.util.Locale;

/**
 * The words for everything that screens, terminal and command line name.
 *
 * @param texts the sentences
 * @param quantities how numbers are written
 */
public record Words(Texts texts, Quantities quantities) {

    /** Name of the bundle that holds the sentences. */
    public static final String BUNDLE = "cablewright.ui.words.words";

    /**
     * Opens the words.
     *
     * @param unit the unit of lengths
     * @param locale the language
     * @return the words
     */
    public static Words in(LengthUnit unit, Locale locale) {
        return new Words(new Texts(BUNDLE, locale), new Quantities(unit));
    }

    /** The language. */
    public Locale locale() {
        return texts.locale();
    }

    /**
     * Says the same in another unit of length.
     *
     * @param unit the unit
     * @return the words
     */
    public Words with(LengthUnit unit) {
        return new Words(texts, new Quantities(unit));
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
     * Names a kind of event for choosing: with the other words that a trade has for it.
     *
     * @param kind the kind
     * @return such as "bridged tap (tee)"
     */
    public String kindToChoose(EventKind kind) {
        return kind == EventKind.BRIDGED_TAP ? texts.say("choose.bridged-tap", kind(kind)) : kind(kind);
    }

    /**
     * Names a kind of event with its article.
     *
     * @param kind the kind
     * @return such as "a bridged tap" or "an open"
     */
    public String aKind(EventKind kind) {
        return texts.say("aKind." + kind.id());
    }

    /**
     * Names a verdict.
     *
     * @param verdict the verdict
     * @return "belongs" or "damage"
     */
    public String verdict(Verdict verdict) {
        return texts.say("verdict." + word(verdict));
    }

    /**
     * Says a caution.
     *
     * @param caution the caution
     * @return a sentence
     */
    public String caution(Caution caution) {
        return texts.say("caution." + word(caution));
    }

    /**
     * Names a caution where there is no room for its sentence.
     *
     * @param caution the caution
     * @return one or two words
     */
    public String cautionInShort(Caution caution) {
        return texts.say("cautionInShort." + word(caution));
    }

    /**
     * Names an end of the line.
     *
     * @param end the end
     * @return "near end" or "far end"
     */
    public String end(LineEnd end) {
        return texts.say("end." + word(end));
    }

    /**
     * Writes an outgoing wave.
     *
     * @param stimulus the wave
     * @return such as "5 ns pulse" or "2 ns step"
     */
    public String stimulus(Stimulus stimulus) {
        return texts.say(
                stimulus.isStep() ? "stimulus.step" : "stimulus.pulse", quantities.time(stimulus.resolutionSeconds()));
    }

    /**
     * Writes what a record says of the end of the line.
     *
     * @param end the record's end
     * @return such as "end: terminated"
     */
    public String recordedEnd(RecordedEnd end) {
        return texts.say("recordedEnd." + word(end.kind()));
    }

    /**
     * Writes what a line ends in.
     *
     * @param end the end
     * @return such as "end: open" or "end: 75 Ω"
     */
    public String farEnd(FarEnd end) {
        if (end instanceof FarEnd.Open) {
            return texts.say("farEnd.open");
        }
        if (end instanceof FarEnd.Short) {
            return texts.say("farEnd.short");
        }
        if (end instanceof FarEnd.Endless) {
            return texts.say("farEnd.endless");
        }
        Lumped load = ((FarEnd.Terminated) end).load();
        boolean resistive = load.resistanceOhms().isPresent()
                && load.inductanceHenries().isEmpty()
                && load.capacitanceFarads().isEmpty();
        return resistive
                ? texts.say("farEnd.ohms", quantities.ohms(load.resistanceOhms().getAsDouble()))
                : texts.say("farEnd.load");
    }

    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

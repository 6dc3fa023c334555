// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.marking.MarkingRules;
import cablewright.lessons.practice.DifficultyFeatures;
import cablewright.lessons.practice.Elo;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.VisibilityWords;
import cablewright.ui.words.Words;

/** Describes what must be found in an exercise, and how hard it is. */
final class AskedWords {

    private final Texts texts;
    private final Words words;
    private final Exercise exercise;

    AskedWords(Texts texts, Words words, Exercise exercise) {
        this.texts = texts;
        this.words = words;
        this.exercise = exercise;
    }

    /** Such as "splice at 31.4 m". */
    String title(LineEvent event) {
        boolean stretch = event.trueEndMetres() > event.trueStartMetres() + 0.5;
        String place = stretch
                ? words.quantities().stretch(event.trueStartMetres(), event.trueEndMetres())
                : words.quantities().length(event.trueStartMetres());
        return texts.say("asked.title", words.kind(event.kind()), place);
    }

    /** As what it counts, and why. */
    String counts(LineEvent event) {
        return texts.say("asked.counts", words.verdict(event.truth()), why(event));
    }

    private String why(LineEvent event) {
        AsBuiltRecord record = exercise.record();
        boolean isDrawn = event.eventId().filter(record::shows).isPresent();
        if (event.ruling().flatMap(EventRuling::verdict).isPresent()) {
            return texts.say("asked.why.set");
        }
        if (event.kind().nature() == Nature.HARDWARE
                && event.truth() == Verdict.DAMAGE
                && (record.mayLie() || isDrawn)) {
            return texts.say("asked.why.badContact");
        }
        if (event.kind().nature() == Nature.DAMAGE) {
            return texts.say("asked.why.damage");
        }
        if (event.kind() == EventKind.END) {
            return texts.say("asked.why.end");
        }
        if (isDrawn) {
            return texts.say("asked.why.drawn");
        }
        return texts.say(event.truth() == Verdict.BELONGS ? "asked.why.mayLie" : "asked.why.notDrawn");
    }

    /** Whether it can be asked for, and why not. */
    String standing(LineEvent event) {
        if (event.standing() == Requirement.DEMANDED) {
            return texts.say(
                    "asked.demanded",
                    words.quantities().percent(event.best().expectedVolts()),
                    words.stimulus(event.best().settings().stimulus()),
                    words.end(event.best().end()),
                    Quantities.significant(event.marks().total()));
        }
        String why =
                new VisibilityWords(words, exercise.cable()).whyNotClear(event).orElse("");
        return texts.say(event.standing() == Requirement.MARGINAL ? "asked.marginal" : "asked.hidden", why);
    }

    /** What a perfect reader hands in, such as "A: 31.4 m, splice, belongs". */
    String flag(Flag flag) {
        String place = flag.endMetres().isPresent()
                ? words.quantities()
                        .stretch(flag.startMetres(), flag.endMetres().getAsDouble())
                : words.quantities().length(flag.startMetres());
        return texts.say(
                "asked.flag",
                flag.letter(),
                place,
                words.end(flag.end()),
                words.kind(flag.kind()),
                words.verdict(flag.verdict()));
    }

    /** How hard it is expected to be, and what that is estimated from. */
    String difficulty(DifficultyFeatures features) {
        double difficulty = features.difficulty();
        String chance = Quantities.number(100 * Elo.chance(0, DifficultyFeatures.logits(difficulty)), 0);
        String what = features.events() == 0
                ? texts.say("difficulty.nothing")
                : texts.say(
                        features.events() == 1 ? "difficulty.one" : "difficulty.events",
                        features.events(),
                        features.damage(),
                        Quantities.significant(features.lowestOverNoise()));
        String close = Double.isFinite(features.closestPulses())
                ? " " + texts.say("difficulty.closest", Quantities.significant(features.closestPulses()))
                : "";
        return texts.say("difficulty.expected", Quantities.number(difficulty, 2), chance) + " " + what + close;
    }

    /** The most marks that can be earned. */
    String marks(int demanded) {
        double events = MarkingRules.EVENT_MARKS * demanded;
        return exercise.prediction().isPresent()
                ? texts.say(
                        "asked.marks.question",
                        Quantities.significant(events + MarkingRules.PREDICTION_MARKS),
                        Quantities.significant(MarkingRules.PREDICTION_MARKS))
                : texts.say("asked.marks", Quantities.significant(events));
    }
}

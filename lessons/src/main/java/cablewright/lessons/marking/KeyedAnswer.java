// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.EventExtent;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.LineMap;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a perfect reader hands in: a flag for every event that must be found, and the right prediction. */
public final class KeyedAnswer {

    private static final int LETTERS = 26;

    private KeyedAnswer() {}

    /**
     * Makes the answer.
     *
     * @param exercise the exercise
     * @return the perfect attempt
     */
    public static Attempt of(Exercise exercise) {
        return of(AnswerKey.of(exercise));
    }

    /**
     * Makes the answer from what is already known of an exercise.
     *
     * @param demand what the exercise asks for
     * @return the perfect attempt
     */
    public static Attempt of(AnswerKey demand) {
        Exercise exercise = demand.exercise();
        List<Flag> flags = new ArrayList<>();
        for (LineEvent event : demand.demanded()) {
            flags.add(flag(letter(flags.size()), event, demand));
        }
        return new Attempt(
                exercise.id(),
                "Perfect reader",
                flags,
                exercise.start().settings(),
                0,
                exercise.prediction().map(Prediction::correctChoiceId),
                exercise.prediction().flatMap(Prediction::reasons).map(Reasons::correctChoiceId),
                Optional.empty(),
                Optional.empty());
    }

    private static Flag flag(String letter, LineEvent event, AnswerKey demand) {
        LineMap.Stretch stretch = demand.stretch(event, event.best().end()).orElseThrow();
        boolean edges = demand.extentOf(event) == EventExtent.EDGES;
        LineMap.Place first = edges ? stretch.nearer() : stretch.middle();
        double velocity = velocity(demand.exercise(), edges ? stretch.farther() : first);
        OptionalDouble second = edges
                ? OptionalDouble.of(
                        MarkingRules.metresThereAndBack(stretch.farther().seconds(), velocity))
                : OptionalDouble.empty();
        return new Flag(
                letter,
                event.best().end(),
                MarkingRules.metresThereAndBack(first.seconds(), velocity),
                second,
                event.kind(),
                event.truth(),
                velocity,
                Optional.of(event.best().settings().stimulus()));
    }

    /** The velocity that the brief states, or else the one at which the place shows its true metres. */
    private static double velocity(Exercise exercise, LineMap.Place place) {
        VelocityRule rule = exercise.permitted().velocity();
        double right = place.seconds() > 0
                ? place.metres() / MarkingRules.metresThereAndBack(place.seconds(), 1)
                : exercise.start().settings().velocityFraction();
        double within = Math.max(rule.leastFraction(), Math.min(rule.mostFraction(), right));
        return rule.statedFraction().orElse(within);
    }

    private static String letter(int index) {
        String last = String.valueOf((char) ('A' + index % LETTERS));
        return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.instrument.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Edits of an exercise: each gives an exercise alike but for one part, or throws with a sentence. */
public final class ExerciseEdits {

    private static final double USUAL_PASS_MARK = 0.7;

    private ExerciseEdits() {}

    /** Wraps one exercise in a lesson of its own. */
    public static Lesson lessonOf(Exercise exercise, BenchTexts texts) {
        return new Lesson(
                exercise.id(),
                exercise.title(),
                exercise.brief(),
                texts.say("lesson.invented"),
                USUAL_PASS_MARK,
                List.of(exercise));
    }

    /**
     * Gives an exercise another name in files.
     *
     * @param exercise the exercise
     * @param id its name
     * @return the exercise
     */
    public static Exercise withId(Exercise exercise, String id) {
        return Copies.with(exercise, "id", id);
    }

    /**
     * Changes the title.
     *
     * @param exercise the exercise
     * @param title one line that gives nothing away
     * @return the exercise
     */
    public static Exercise withTitle(Exercise exercise, String title) {
        return Copies.with(exercise, "title", title);
    }

    /**
     * Changes the brief.
     *
     * @param exercise the exercise
     * @param brief Markdown
     * @return the exercise
     */
    public static Exercise withBrief(Exercise exercise, String brief) {
        return Copies.with(exercise, "brief", brief);
    }

    /**
     * Adds a caution or takes it away. They keep their usual order; local codes always stay, and come last.
     *
     * @param exercise the exercise
     * @param caution the caution
     * @param shown whether it is to be shown
     * @return the exercise
     */
    public static Exercise withCaution(Exercise exercise, Caution caution, boolean shown) {
        List<Caution> cautions = new ArrayList<>();
        for (Caution one : Caution.values()) {
            boolean wanted = one == caution ? shown : exercise.cautions().contains(one);
            if (wanted || one == Caution.LOCAL_CODES) {
                cautions.add(one);
            }
        }
        return Copies.with(exercise, "cautions", cautions);
    }

    /**
     * Lays another cable.
     *
     * @param exercise the exercise
     * @param cable the cable
     * @return the exercise
     */
    public static Exercise withCable(Exercise exercise, Cable cable) {
        List<EventRuling> kept = exercise.rulings().stream()
                .filter(ruling -> cable.event(ruling.eventId()).isPresent())
                .toList();
        return Copies.with(Copies.with(exercise, "rulings", kept), "cable", cable);
    }

    /**
     * Puts other drawings beside the cable.
     *
     * @param exercise the exercise
     * @param record the record
     * @return the exercise
     */
    public static Exercise withRecord(Exercise exercise, AsBuiltRecord record) {
        return Copies.with(exercise, "record", record);
    }

    /**
     * Takes another instrument.
     *
     * @param exercise the exercise
     * @param instrument the instrument
     * @return the exercise
     */
    public static Exercise withInstrument(Exercise exercise, Instrument instrument) {
        return Copies.with(exercise, "instrument", instrument);
    }

    /**
     * Changes what the trainee may change, and what is set at the start.
     *
     * @param exercise the exercise
     * @param permitted the choices
     * @param start what is set when it opens; one of them
     * @return the exercise
     */
    public static Exercise withPermitted(Exercise exercise, Permitted permitted, Start start) {
        return new Exercise(
                exercise.id(),
                exercise.title(),
                exercise.brief(),
                exercise.cautions(),
                exercise.cable(),
                exercise.record(),
                exercise.instrument(),
                start,
                permitted,
                exercise.toleranceMetres(),
                exercise.hints(),
                exercise.explanation(),
                exercise.prediction(),
                exercise.noiseSeed(),
                exercise.endIsGiven(),
                exercise.rulings());
    }

    /**
     * Changes what the trainee may change; what is set at the start follows where it must: the nearest choice is taken.
     *
     * @param exercise the exercise
     * @param permitted the choices
     * @return the exercise
     */
    public static Exercise withPermitted(Exercise exercise, Permitted permitted) {
        return withPermitted(exercise, permitted, NearestStart.within(permitted, exercise.start()));
    }

    /**
     * Changes how near a place must be.
     *
     * @param exercise the exercise
     * @param toleranceMetres tolerance [m]; empty for the usual one
     * @return the exercise
     */
    public static Exercise withTolerance(Exercise exercise, OptionalDouble toleranceMetres) {
        return Copies.with(exercise, "toleranceMetres", toleranceMetres);
    }

    /**
     * Changes the hints.
     *
     * @param exercise the exercise
     * @param hints hints in order
     * @return the exercise
     */
    public static Exercise withHints(Exercise exercise, List<Hint> hints) {
        return Copies.with(exercise, "hints", hints);
    }

    /**
     * Changes what is shown after commit.
     *
     * @param exercise the exercise
     * @param explanation Markdown
     * @return the exercise
     */
    public static Exercise withExplanation(Exercise exercise, String explanation) {
        return Copies.with(exercise, "explanation", explanation);
    }

    /**
     * Changes the question that is asked first.
     *
     * @param exercise the exercise
     * @param prediction the question; empty for none
     * @return the exercise
     */
    public static Exercise withPrediction(Exercise exercise, Optional<Prediction> prediction) {
        return Copies.with(exercise, "prediction", prediction);
    }

    /**
     * Says whether the end of the line is known.
     *
     * @param exercise the exercise
     * @param endIsGiven whether it need not be flagged
     * @return the exercise
     */
    public static Exercise withEndGiven(Exercise exercise, boolean endIsGiven) {
        return Copies.with(exercise, "endIsGiven", endIsGiven);
    }

    /**
     * Changes how one event is marked.
     *
     * @param exercise the exercise
     * @param ruling the ruling; one that changes nothing is taken away
     * @return the exercise
     */
    public static Exercise withRuling(Exercise exercise, EventRuling ruling) {
        List<EventRuling> rulings = new ArrayList<>(exercise.rulings());
        rulings.removeIf(one -> one.eventId().equals(ruling.eventId()));
        if (!ruling.isUsual()) {
            rulings.add(ruling);
        }
        return Copies.with(exercise, "rulings", rulings);
    }
}

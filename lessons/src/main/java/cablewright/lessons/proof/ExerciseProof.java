// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.proof;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.BestView;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.generation.LookAlikes;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether an exercise is fit to set.
 *
 * @param exerciseId the exercise
 * @param events each event with whether it is asked for and where it shows best
 * @param marks what a perfect reader earns
 * @param maximumMarks most that can be earned
 * @param problems what must be put right; empty where it is fit to set
 */
public record ExerciseProof(
        String exerciseId, List<LineEvent> events, double marks, double maximumMarks, List<Problem> problems) {

    /** Copies the lists. */
    public ExerciseProof {
        events = List.copyOf(events);
        problems = List.copyOf(problems);
    }

    /**
     * Something to put right.
     *
     * @param kind what it is
     * @param subject the event or item that it is about; empty for the exercise
     */
    public record Problem(Kind kind, String subject) {
        /** What can be wrong with an exercise. */
        public enum Kind {
            /** Nothing can be earned. */
            NOTHING_ASKED,
            /** A perfect reader does not earn all marks. */
            READER_LOSES_MARKS,
            /** Damage that no permitted setting shows, in an exercise that asks for something else. */
            DAMAGE_HIDDEN,
            /** Another kind of event would make the same trace at every permitted setting. */
            LOOKS_LIKE_ANOTHER,
            /** Hardware that counts as sound is larger than well made hardware is. */
            HARDWARE_TOO_LARGE,
            /** The record puts an item where the cable has it not, and nothing says that it may. */
            RECORD_CONTRADICTS,
            /** Local codes are not among the cautions. */
            NO_LOCAL_CODES
        }
    }

    /**
     * Examines an exercise.
     *
     * @param exercise the exercise
     * @param marker works out answer keys, and remembers them
     * @return what was found
     */
    public static ExerciseProof of(Exercise exercise, Marker marker) {
        AnswerKey key = marker.demand(exercise);
        MarkSheet sheet = marker.mark(exercise, KeyedAnswer.of(key));
        List<Problem> problems = new ArrayList<>();
        if (sheet.maximum() <= 0) {
            problems.add(new Problem(Problem.Kind.NOTHING_ASKED, ""));
        }
        if (sheet.marks() < sheet.maximum() - 1e-6) {
            problems.add(new Problem(Problem.Kind.READER_LOSES_MARKS, ""));
        }
        for (LineEvent event : key.events()) {
            boolean asksForNothingElse = exercise.prediction().isPresent();
            String name = event.eventId().orElse("");
            if (event.standing() != Requirement.DEMANDED
                    && event.truth() == Verdict.DAMAGE
                    && !asksForNothingElse
                    && exercise.ruling(name).isEmpty()) {
                problems.add(new Problem(Problem.Kind.DAMAGE_HIDDEN, name));
            }
            if (event.truth() == Verdict.BELONGS && !SoundHardware.isWellMade(exercise.cable(), name)) {
                problems.add(new Problem(Problem.Kind.HARDWARE_TOO_LARGE, name));
            }
        }
        if (!isToldApart(exercise, key)) {
            problems.add(new Problem(Problem.Kind.LOOKS_LIKE_ANOTHER, ""));
        }
        if (!exercise.record().mayLie()) {
            exercise.record().items().stream()
                    .filter(item -> exercise.cable()
                            .event(item.id())
                            .filter(event ->
                                    event.startMetres() == item.positionMetres() && event.kind() == item.kind())
                            .isEmpty())
                    .forEach(item -> problems.add(new Problem(Problem.Kind.RECORD_CONTRADICTS, item.id())));
        }
        if (!exercise.cautions().contains(Caution.LOCAL_CODES)) {
            problems.add(new Problem(Problem.Kind.NO_LOCAL_CODES, ""));
        }
        return new ExerciseProof(exercise.id(), key.events(), sheet.marks(), sheet.maximum(), problems);
    }

    /** Each damage that is asked for is distinguished from its look-alikes where it shows best, or at another permitted stimulus. */
    private static boolean isToldApart(Exercise exercise, AnswerKey key) {
        PropagationCache memory = new PropagationCache();
        for (LineEvent event : key.demanded()) {
            if (event.truth() == Verdict.DAMAGE && event.eventId().isPresent()) {
                String name = event.eventId().get();
                BestView best = event.best();
                Cable cable = exercise.cable();
                boolean apart = exercise.permitted().stimuli().stream().anyMatch(stimulus -> {
                    Settings settings = best.settings().withStimulus(stimulus);
                    return new LookAlikes(Measurement.at(best.end(), cable, exercise.instrument(), memory), settings)
                            .toldApart(name, exercise.instrument().sourceOhms());
                });
                if (!apart) {
                    return false;
                }
            }
        }
        return true;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.Suggestion;
import cablewright.simulator.explanation.visibility.Suggestions;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.drawing.track.CableDrawing;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The instrument joined to the cable that is being built. Used from threads that work, never from the screen's. Traces
 * share one memory of lines, so that a trace after one event moved costs little more than that event; looks share another.
 */
final class BenchTraces {

    private final PropagationCache traceMemory = new PropagationCache();
    private final PropagationCache lookMemory = new PropagationCache();

    /**
     * What is asked.
     *
     * @param exercise the exercise with its cable and instrument
     * @param settings what is set
     * @param end the end that is tested
     */
    record Question(Exercise exercise, Settings settings, LineEnd end) {}

    /** The trace, and the cable laid out under it. */
    record Answer(Question question, Trace trace, CableDrawing drawing) {}

    Answer answer(Question question) {
        double top = question.settings().stimulus().topHertz();
        return new Answer(
                question,
                trace(question),
                CableDrawing.of(
                        question.exercise().cable(),
                        question.end(),
                        question.settings().velocityFraction(),
                        top));
    }

    Trace trace(Question question) {
        Exercise exercise = question.exercise();
        return Measurement.at(question.end(), exercise.cable(), exercise.instrument(), traceMemory)
                .trace(question.settings(), exercise.noiseSeed());
    }

    List<EventVisibility> sights(Question question, BooleanSupplier cancelled) {
        Exercise exercise = question.exercise();
        return VisibilityAnalysis.of(
                exercise.cable(), exercise.instrument(), question.settings(), question.end(), lookMemory, cancelled);
    }

    List<EventFacts> facts(Question question, EventVisibility sight) {
        Exercise exercise = question.exercise();
        return EventFacts.of(
                exercise.cable(), exercise.instrument(), question.settings(), question.end(), List.of(sight));
    }

    Optional<Suggestion> suggestion(Question question, EventVisibility sight, BooleanSupplier cancelled) {
        Exercise exercise = question.exercise();
        return Optional.ofNullable(Suggestions.of(
                        exercise.cable(),
                        exercise.instrument(),
                        question.settings(),
                        question.end(),
                        List.of(sight),
                        cancelled)
                .get(sight.eventId()));
    }
}

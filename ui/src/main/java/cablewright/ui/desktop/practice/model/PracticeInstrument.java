// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.generation.TypicalEvents;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.drawing.track.CableDrawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The instrument joined to the exercise's cable. Used from threads that work, never from the screen's: one trace at a time
 * and one look at a time, each with a memory of its own.
 */
final class PracticeInstrument {

    private static final String CLAIMED = "claimed";

    private final Exercise exercise;
    private final PropagationCache traceMemory = new PropagationCache();
    private final PropagationCache lookMemory = new PropagationCache();

    PracticeInstrument(Exercise exercise) {
        this.exercise = exercise;
    }

    /** The cable under its trace, and how each event shows. */
    record LookAtCable(CableDrawing drawing, List<EventVisibility> sights) {}

    Trace trace(Settings settings, LineEnd end) {
        return Measurement.at(end, exercise.cable(), exercise.instrument(), traceMemory)
                .trace(settings, exercise.noiseSeed());
    }

    /** The trace of the cable as a claim has it: what is there taken away, and the claimed thing at the flag's place. */
    Optional<Trace> claimed(Claim claim, Settings settings) {
        LineEnd end = claim.flag().end();
        Measurement measurement = Measurement.at(end, exercise.cable(), exercise.instrument(), lookMemory);
        Cable without =
                claim.insteadOf().map(measurement.tested()::withoutEvent).orElse(measurement.tested());
        double oneWay = settings.withVelocityFraction(claim.flag().velocityFraction())
                        .secondsThereAndBack(claim.flag().startMetres())
                / 2;
        double metres = CableProfile.of(without).metresAt(oneWay);
        return TypicalEvents.of(
                        CLAIMED, claim.flag().kind(), without.runAt(metres).type(), metres, settings.halfPulseMetres())
                .filter(event -> event.endMetres() <= without.lengthMetres())
                .map(event -> {
                    List<Event> events = new ArrayList<>(without.events());
                    events.add(event);
                    return measurement.of(without.withEvents(events)).trace(settings, exercise.noiseSeed());
                });
    }

    LookAtCable look(Settings settings, LineEnd end) {
        double top = settings.stimulus().topHertz();
        return new LookAtCable(
                CableDrawing.of(exercise.cable(), end, settings.velocityFraction(), top),
                VisibilityAnalysis.of(exercise.cable(), exercise.instrument(), settings, end, lookMemory, () -> false));
    }
}

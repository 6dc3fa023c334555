// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Exact traces of an exercise's cable, with events and without, and the times at which waves are back. */
final class ExactTraces {

    private final Exercise exercise;
    private final PropagationCache memory = new PropagationCache();
    private final Map<String, Trace> traces = new HashMap<>();

    ExactTraces(Exercise exercise) {
        this.exercise = exercise;
    }

    SimulatedPort port(LineEnd end) {
        return new SimulatedPort(tested(end), exercise.instrument().sourceOhms(), memory);
    }

    Trace trace(Cable tested, Settings settings) {
        return new Reflectometer(exercise.instrument())
                .withoutNoise(new SimulatedPort(tested, exercise.instrument().sourceOhms(), memory), settings);
    }

    Trace with(Settings settings, LineEnd end) {
        return traces.computeIfAbsent("with " + end + settings, key -> trace(tested(end), settings));
    }

    Trace without(String eventId, Settings settings, LineEnd end) {
        return traces.computeIfAbsent(
                eventId + end + settings, key -> trace(tested(end).withoutEvent(eventId), settings));
    }

    Cable tested(LineEnd end) {
        return exercise.cable().seenFrom(end);
    }

    double fromEnd(double trueMetres, LineEnd end) {
        return end == LineEnd.NEAR ? trueMetres : exercise.cable().lengthMetres() - trueMetres;
    }

    double seconds(double trueMetres, LineEnd end) {
        return 2 * CableProfile.of(tested(end)).secondsTo(fromEnd(trueMetres, end));
    }

    double lastOf(String eventId, LineEnd end, double back) {
        Event event = tested(end).event(eventId).orElseThrow();
        double branch = event instanceof BridgedTap tap
                ? 2 * CableProfile.of(tap.branch()).secondsTo(tap.branch().lengthMetres())
                : 0;
        return branch + Math.max(back, 2 * CableProfile.of(tested(end)).secondsTo(event.endMetres()));
    }

    /** When half of the edge is back that an open at a place would show. */
    double cleanSeconds(double trueMetres, Settings settings, LineEnd end) {
        double metres = fromEnd(trueMetres, end);
        List<Event> before = new ArrayList<>();
        tested(end).events().stream()
                .filter(event ->
                        event.endMetres() < metres && event.kind() != EventKind.OPEN && event.kind() != EventKind.SHORT)
                .forEach(before::add);
        before.add(new BrokenConductor("cut", metres, OptionalDouble.empty()));
        Trace open = trace(tested(end).withEvents(before), settings);
        double back = seconds(trueMetres, end);
        int from = open.indexNear(settings.metresThereAndBack(back));
        int top = from;
        for (int i = from;
                i < open.count()
                        && open.seconds(i) < back + 2 * settings.stimulus().settledSeconds();
                i++) {
            top = open.volts(i) > open.volts(top) ? i : top;
        }
        int i = top;
        int start = Math.max(1, from - (int) (settings.stimulus().shortestEdgeSeconds() / open.sampleSeconds()));
        double half = (open.volts(top) + open.volts(start)) / 2;
        while (i > start && open.volts(i) > half) {
            i--;
        }
        return open.seconds(i);
    }

    Optional<Trace> instead(String eventId, Event other, Settings settings, LineEnd end) {
        try {
            List<Event> events =
                    new ArrayList<>(exercise.cable().withoutEvent(eventId).events());
            events.add(other);
            return Optional.of(trace(exercise.cable().withEvents(events).seenFrom(end), settings));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}

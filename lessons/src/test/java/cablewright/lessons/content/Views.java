// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.HalfSine;

/** Looks at the cables of exercises with the simulator alone, with none of the marking. */
final class Views {

    private Views() {}

    /** The settings with which an exercise opens, with another pulse and the widest range. */
    static Settings settings(Exercise exercise, double pulseSeconds, int averages) {
        Settings start = exercise.start().settings();
        double range = exercise.permitted().rangesMetres().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
        double velocity = exercise.permitted().velocity().statedFraction().orElse(0.85);
        return new Settings(new HalfSine(pulseSeconds), velocity, range, start.gainDecibels(), averages);
    }

    static EventVisibility sight(Exercise exercise, String eventId, Settings settings, LineEnd end) {
        return VisibilityAnalysis.of(exercise.cable(), exercise.instrument(), settings, end).stream()
                .filter(sight -> sight.eventId().equals(eventId))
                .findFirst()
                .orElseThrow();
    }

    static Trace trace(Exercise exercise, Cable cable, Settings settings, LineEnd end) {
        Cable tested = end == LineEnd.NEAR ? cable : cable.seenFromFarEnd();
        SimulatedPort port = new SimulatedPort(tested, exercise.instrument().sourceOhms());
        return new Reflectometer(exercise.instrument()).withoutNoise(port, settings);
    }

    /** Where a careful reader sees the edge of a place half-way up, on the trace without noise. */
    static double halfWayUp(Exercise exercise, String eventId, PlaceVisibility place, Settings settings, LineEnd end) {
        Trace with = trace(exercise, exercise.cable(), settings, end);
        Trace without = trace(exercise, exercise.cable().withoutEvent(eventId), settings, end);
        double sign = Math.signum(place.expectedVolts());
        double half = Math.abs(place.expectedVolts()) / 2;
        double before = 0;
        for (int i = with.indexNear(place.shownMetres() - 1.5); i < with.count(); i++) {
            double change = sign * (with.volts(i) - without.volts(i));
            if (change >= half) {
                double share = (half - before) / (change - before);
                return with.metres(i - 1) + share * (with.metres(i) - with.metres(i - 1));
            }
            before = change;
        }
        throw new AssertionError("no edge of " + eventId);
    }
}

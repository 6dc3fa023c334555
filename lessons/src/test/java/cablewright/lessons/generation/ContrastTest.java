// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ContrastTest {

    private static Exercise with(Contrast contrast, long seed) {
        return new ExerciseGenerator()
                .generate(new GenerationRequest(seed, List.of(ExerciseFamily.values()), List.of(), 0.3, contrast));
    }

    private static Trace trace(Exercise exercise, Cable cable) {
        Settings settings = exercise.start().settings().withAverages(256);
        return new Reflectometer(exercise.instrument())
                .withoutNoise(new SimulatedPort(cable, exercise.instrument().sourceOhms()), settings);
    }

    /** Out to the farther, back to the nearer, out again and home: twice the way to the farther less that to the nearer. */
    private static double ghostMetres(Exercise exercise) {
        return 2 * event(exercise, "e2").startMetres() - event(exercise, "e1").startMetres();
    }

    private static Event event(Exercise exercise, String id) {
        return exercise.cable().event(id).orElseThrow();
    }

    @Test
    void ghostShowsInOpenCableAndGoesWithEitherOfItsTwoEvents() {
        for (int seed = 0; seed < 12; seed++) {
            Exercise exercise = with(Contrast.GHOST_AND_EVENT, seed);
            double ghost = ghostMetres(exercise);
            double half = exercise.start().settings().halfPulseMetres();
            assertTrue(ghost + half < exercise.cable().lengthMetres(), "beyond the end");
            for (Event event : exercise.cable().events()) {
                assertTrue(Math.abs(event.startMetres() - ghost) > half, "an event is there");
            }
            Trace both = trace(exercise, exercise.cable());
            Trace nearer = trace(exercise, exercise.cable().withoutEvent("e1"));
            Trace farther = trace(exercise, exercise.cable().withoutEvent("e2"));
            Trace neither = trace(exercise, exercise.cable().withoutEvent("e1").withoutEvent("e2"));
            double height = 0;
            for (int i = both.indexNear(ghost - half); i < both.indexNear(ghost + 2 * half); i++) {
                height = Math.max(
                        height, Math.abs(both.volts(i) - nearer.volts(i) - farther.volts(i) + neither.volts(i)));
            }
            assertTrue(height >= 6 * both.noiseVolts(), exercise.id() + " " + height);
        }
    }

    @Test
    void whoDigsAtTheGhostIsToldItsPath() {
        int told = 0;
        for (int seed = 0; seed < 6; seed++) {
            Exercise exercise = with(Contrast.GHOST_AND_EVENT, seed);
            double velocity = exercise.start().settings().velocityFraction();
            Flag flag = new Flag(
                    "A",
                    LineEnd.NEAR,
                    ghostMetres(exercise),
                    OptionalDouble.empty(),
                    EventKind.PINCH,
                    Verdict.DAMAGE,
                    velocity);
            Attempt attempt = new Attempt(
                    exercise.id(),
                    "Ada",
                    List.of(flag),
                    exercise.start().settings().withAverages(256));
            List<Finding> findings = new Marker().mark(exercise, attempt).findings();
            told += findings.stream()
                            .filter(Finding.GhostTakenForEvent.class::isInstance)
                            .map(finding -> ((Finding.GhostTakenForEvent) finding).path())
                            .anyMatch(
                                    List.of(Reflector.event("e2"), Reflector.event("e1"), Reflector.event("e2"))
                                            ::equals)
                    ? 1
                    : 0;
        }
        assertTrue(told >= 5, told + " of 6");
    }

    @Test
    void spliceAndConnectorLieOnOneLine() {
        for (int seed = 0; seed < 10; seed++) {
            List<EventKind> kinds = new ArrayList<>();
            with(Contrast.SPLICE_AND_CONNECTOR, seed).cable().events().forEach(event -> kinds.add(event.kind()));
            assertTrue(kinds.containsAll(List.of(EventKind.SPLICE, EventKind.CONNECTOR)), kinds.toString());
        }
    }

    @Test
    void newReelHasNoContrast() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class,
                () -> new GenerationRequest(
                        5, List.of(ExerciseFamily.REEL_ACCEPTANCE), List.of(), 0.3, Contrast.GHOST_AND_EVENT));
        assertTrue(refusal.getMessage().contains("COAX_DROP"), refusal.getMessage());
    }

    /** t1 + t2 is the way along the whole line and back, whatever the velocity; worked out from traces, not from the cable. */
    @Test
    void aFaultBetweenTheEndsIsFoundWithoutAVelocity() {
        for (int seed = 0; seed < 8; seed++) {
            Exercise exercise = with(Contrast.BOTH_ENDS, seed);
            assertTrue(exercise.permitted().velocity().statedFraction().isEmpty());
            assertTrue(exercise.permitted().ends().containsAll(List.of(LineEnd.values())));
            double near = firstEcho(exercise, LineEnd.NEAR);
            double far = firstEcho(exercise, LineEnd.FAR);
            double place = exercise.cable().lengthMetres() * near / (near + far);
            double half = exercise.start().settings().halfPulseMetres();
            assertEquals(event(exercise, "e1").startMetres(), place, half / 4 + 0.01 * place, exercise.id());
        }
    }

    /** When the trace is last half-way up its largest echo's front. */
    private static double firstEcho(Exercise exercise, LineEnd end) {
        Trace trace = trace(exercise, exercise.cable().seenFrom(end));
        int from = trace.indexNear(4 * exercise.start().settings().halfPulseMetres());
        int top = from;
        for (int i = from; i < trace.count(); i++) {
            top = Math.abs(trace.volts(i)) > Math.abs(trace.volts(top)) ? i : top;
        }
        int at = top;
        while (at > from && Math.abs(trace.volts(at)) > Math.abs(trace.volts(top)) / 2) {
            at--;
        }
        return trace.seconds(at);
    }

    /** The near thing needs the shortest pulse, the far fault the longest: by traces with and without each. */
    @Test
    void theLadderOfWidthsNeedsBothOfItsEnds() {
        for (int seed = 0; seed < 6; seed++) {
            Exercise exercise = with(Contrast.LADDER_OF_WIDTHS, seed);
            List<Stimulus> stimuli = exercise.permitted().stimuli();
            Stimulus shortest = stimuli.get(0);
            Stimulus longest = stimuli.get(stimuli.size() - 1);
            double noise = exercise.instrument().noiseVoltsAfter(256);
            assertTrue(changeBy(exercise, "e2", longest) > 6 * noise, exercise.id());
            assertTrue(changeBy(exercise, "e2", shortest) < 6 * noise, exercise.id());
            assertEquals(shortest, exercise.start().settings().stimulus(), "it opens on the lowest rung");
        }
    }

    private static double changeBy(Exercise exercise, String id, Stimulus stimulus) {
        Settings settings = exercise.start().settings().withStimulus(stimulus).withAverages(256);
        Reflectometer reflectometer = new Reflectometer(exercise.instrument());
        double ohms = exercise.instrument().sourceOhms();
        Trace with = reflectometer.withoutNoise(new SimulatedPort(exercise.cable(), ohms), settings);
        Trace without =
                reflectometer.withoutNoise(new SimulatedPort(exercise.cable().withoutEvent(id), ohms), settings);
        double most = 0;
        for (int i = 0; i < with.count(); i++) {
            most = Math.max(most, Math.abs(with.volts(i) - without.volts(i)));
        }
        return most;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.attribution.Bump;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What comes back from the cables of the harbour line, one of each kind, as each opens and from either end, is told path by path: to more than
 * 99.99 % of its energy, and every bump of the trace that the trainee meets, noise and all.
 */
class LessonPathsTest {

    static Stream<Exercise> exercises() {
        return BuiltInLessons.find("harbour-line").map(Lesson::exercises).stream()
                .flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void pathsExplainTheTrace(Exercise exercise) {
        for (LineEnd end : LineEnd.values()) {
            Cable tested =
                    end == LineEnd.NEAR ? exercise.cable() : exercise.cable().seenFromFarEnd();
            Trace trace = new Reflectometer(exercise.instrument())
                    .measure(
                            new SimulatedPort(tested, exercise.instrument().sourceOhms()),
                            exercise.start().settings(),
                            exercise.noiseSeed());
            Attribution attribution =
                    Attribution.ofTrace(exercise.cable(), exercise.instrument(), trace, end, () -> false);
            assertTrue(
                    attribution.explainedEnergyShare() >= 0.9999,
                    end + " explained " + attribution.explainedEnergyShare());
            assertFalse(attribution.bumps().isEmpty());
            for (Bump bump : attribution.bumps()) {
                assertTrue(bump.isExplained() || bump.isRestWithinNoise(), end + ": " + bump);
            }
        }
    }
}

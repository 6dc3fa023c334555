// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An exercise is fit to set when no other kind of event would have made the same trace. */
class BuiltInLookAlikesTest {

    static List<Exercise> exercises() {
        return BuiltInLessons.find("harbour-line").orElseThrow().exercises();
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void somePermittedPulseTellsEachDamageFromItsLookAlikes(Exercise exercise) {
        Settings start = exercise.start().settings();
        boolean toldApart = false;
        for (Stimulus stimulus : exercise.permitted().stimuli()) {
            Settings settings = start.withStimulus(stimulus).withAverages(64);
            LookAlikes lookAlikes = new LookAlikes(Measurement.at(exercise.cable(), exercise.instrument()), settings);
            toldApart |= lookAlikes.allToldApart(exercise.instrument().sourceOhms());
        }
        assertTrue(toldApart, exercise.id());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class NearestStartTest {

    private static final Exercise STREET =
            BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT).exercise();

    @Test
    void whatIsStillPermittedStays() {
        assertEquals(STREET, ExerciseEdits.withPermitted(STREET, STREET.permitted()));
    }

    @Test
    void whatIsNoLongerPermittedBecomesTheNearestChoice() {
        Permitted other = new Permitted(
                List.of(new RaisedCosineStep(9e-9), new HalfSine(2e-9), new HalfSine(100e-9)),
                new VelocityRule(0.5, 0.6, OptionalDouble.of(0.55)),
                List.of(100.0, 1000.0),
                List.of(0.0, 40.0),
                List.of(1, 300),
                List.of(LineEnd.FAR));
        Start set = new Start(new Settings(new HalfSine(10e-9), 0.87, 300, 12, 256), LineEnd.NEAR);
        Start nearest = NearestStart.within(other, set);
        assertEquals(new Start(new Settings(new HalfSine(2e-9), 0.6, 100, 0, 300), LineEnd.FAR), nearest);
        assertTrue(other.allows(nearest.settings(), nearest.end()));
        assertEquals(other, ExerciseEdits.withPermitted(STREET, other).permitted());
    }
}

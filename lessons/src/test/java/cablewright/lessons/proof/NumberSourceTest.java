// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.course.LiveFigure;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.HalfSine;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in texts, held against closed forms. The line has no loss, 75 Ω and 85 %. */
class NumberSourceTest {

    private static final NumberSource LINE = NumberSource.of(new LiveFigure(
            "figure",
            "A joint of 30 Ω at 40 m",
            SampleExercises.with(new CorrodedJoint("joint", 40, 30, OptionalDouble.empty()))
                    .cable(),
            Optional.empty(),
            new Settings(new HalfSine(10e-9), SampleExercises.VELOCITY, 130, 0, 1),
            Optional.empty()));

    /**
     * Half a pulse and the time there and back are from v = 0.85 c, c = 299 792 458 m/s (exact, SI): 0.254823589 m for 2 ns and
     * 7.8485669 ns/m. Series R reflects R/(R + 2 Z0), R across −Z0/(2R + Z0), an end (Z − Z0)/(Z + Z0): Pozar, Microwave
     * Engineering, 4th ed., ch. 2 and 4 (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "half 2ns, 0.254823589, 1e-8",
        "pulse 25ns, 6.37058973, 1e-7",
        "back 100, 784.85669, 1e-4",
        "at joint, 40, 0",
        "length line, 100, 0",
        "ohms line, 75, 1e-9",
        "speed line, 85, 1e-9",
        "height joint 10ns, 16.6667, 0.1",
        "ratio joint 10ns, 16.6667, 0.1",
        "full joint 10ns, 100, 0.5",
        "way joint 10ns, 0, 0.05",
        "shown joint 10ns, 40, 0.3",
        "noise 16, 0.1, 1e-12",
        "reflection 150 75, 33.33333333, 1e-6",
        "returnloss 150 75, 9.54242509, 1e-6",
        "decibels 50, -6.02059991, 1e-6",
        "series 16.6666667 75, 30, 1e-5",
        "across 78.9473684 75, 10, 1e-5",
        "scale 95 80 85, 89.4117647, 1e-6"
    })
    void itComesToWhatTheFormulaGives(String words, double expected, double tolerance) {
        assertEquals(expected, LINE.value(words), tolerance);
    }

    /** The open end sends all of the pulse back but what the joint turns round twice: (1 − 1/6)². */
    @Test
    void peakAndLevelReadTheTrace() {
        assertEquals(100 * Math.pow(5.0 / 6, 2), LINE.value("peak 90 115 10ns"), 0.5);
        assertEquals(0, LINE.value("level 20 10ns"), 0.01);
    }

    @Test
    void fromTheFarEndTheJointIsAtItsOtherDistance() {
        assertEquals(60, LINE.value("shown joint 10ns far"), 0.3);
    }

    @ParameterizedTest
    @CsvSource({"height nothing 10ns", "depth joint", "height", "reflection x 75", "ohms joint"})
    void whatIsNoSourceIsRefusedInWords(String words) {
        Exception refused = assertThrows(IllegalArgumentException.class, () -> LINE.value(words));
        assertTrue(refused.getMessage().contains("\""), refused::getMessage);
    }
}

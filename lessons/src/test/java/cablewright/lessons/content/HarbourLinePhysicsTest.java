// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.port.SimulatedPort;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the harbour line teaches, held against other ways to work it out. */
class HarbourLinePhysicsTest {

    private static Exercise exercise(String id) {
        return BuiltInLessons.find("harbour-line").orElseThrow().exercise(id).orElseThrow();
    }

    @Test
    void insideTheReelTheTraceIsThatOfAGoodOneWithinATenthOfAPerCent() {
        Exercise exercise = exercise("reel-on-the-dock");
        Cable good = exercise.cable().withoutEvent("core");
        for (double pulse : new double[] {2e-9, 10e-9, 25e-9}) {
            Settings settings = Views.settings(exercise, pulse, 16);
            for (LineEnd end : LineEnd.values()) {
                Trace bad = Views.trace(exercise, exercise.cable(), settings, end);
                Trace sound = Views.trace(exercise, good, settings, end);
                for (int i = bad.indexNear(8); i < bad.indexNear(98); i++) {
                    assertEquals(sound.volts(i), bad.volts(i), 1e-3);
                }
            }
        }
    }

    /** Without loss the inside of a line of any one impedance reflects nothing at all. */
    @Test
    void withoutLossTheInsideOfTheReelShowsNothingAtAll() {
        Exercise exercise = exercise("reel-on-the-dock");
        double ohms = Catalogue.standard()
                .type("drop-6-foam")
                .section()
                .offCentre(0.45)
                .impedanceOhms();
        CableType type = new CableType(
                "no-loss",
                "No loss",
                CableFamily.REFERENCE,
                ConstantsSection.lossless(ohms, 0.85),
                "definition",
                ohms,
                0.85,
                List.of());
        Cable cable = new Cable("reel", List.of(new Run(type, 100)), List.of(), new FarEnd.Open());
        Instrument quick = new Instrument(
                75,
                1e9,
                1,
                0,
                1e-9,
                0.004,
                12,
                1.25,
                4096,
                0,
                exercise.instrument().interference());
        Settings settings = Views.settings(exercise, 10e-9, 16);
        Trace trace = new Reflectometer(quick).withoutNoise(new SimulatedPort(cable, 75), settings);

        for (int i = trace.indexNear(8); i < trace.indexNear(98); i++) {
            assertEquals(0, trace.volts(i), 1e-6);
        }
    }

    @Test
    void thePredictionsStateTheLawsTheyRestOn() {
        Prediction end = exercise("lamp-house-feeder").prediction().orElseThrow();
        assertTrue(end.explanation().contains("(Z − Z0)/(Z + Z0)"));
        assertEquals(0.5, (225.0 - 75) / (225 + 75), "half comes back from 225 Ω");
        assertTrue(end.choice("half").orElseThrow().reason().contains("225 Ω"));
    }
}

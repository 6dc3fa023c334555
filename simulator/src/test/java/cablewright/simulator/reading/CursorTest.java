// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Interference;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.RaisedCosineStep;
import org.junit.jupiter.api.Test;

class CursorTest {

    private static final double LIGHT = 299_792_458.0;
    private final Instrument ideal = new Instrument(75, 1e10, 1, 0, 1e-9, 0, 24, 1.25, 4096, 0, Interference.none());
    private final Settings pulse = new Settings(new GaussianPulse(5e-9), 0.85, 150, 0, 1);

    private Trace trace(Settings settings, Instrument instrument, double endOhms, Event... events) {
        return new Reflectometer(instrument)
                .withoutNoise(
                        new SimulatedPort(
                                cable(lossless(75, 0.85 * LIGHT), 100, FarEnd.Terminated.byOhms(endOhms), events), 75),
                        settings);
    }

    @Test
    void stepShowsTheImpedanceAtTheEndOfALineWithoutLoss() {
        Trace step = trace(pulse.withStimulus(new RaisedCosineStep(1e-9)), ideal, 150);
        Cursor before = Cursor.on(step, 60);
        Cursor beyond = Cursor.on(step, 120);
        assertEquals(75, before.apparentOhms(75).orElseThrow(), 1e-3);
        assertEquals(150, beyond.apparentOhms(75).orElseThrow(), 1e-3);
        assertEquals(1.0 / 3, beyond.reflection().orElseThrow().coefficient(), 1e-6);
        assertEquals(2 * 120 / (0.85 * LIGHT), beyond.seconds(), 1e-18);
    }

    @Test
    void cursorUnderTheOutgoingWaveTellsNoReflection() {
        Cursor under = new Cursor(0, 0, 1.02);
        assertTrue(under.reflection().isEmpty());
        assertTrue(under.apparentOhms(75).isEmpty());
    }

    /** Series R = 10 Ω in a line of 75 Ω: ρ = R/(R + 2 Z0) = 1/16 (Pozar, sec. 4.3, from memory), so 24.08 dB. */
    @Test
    void returnLossOfASeriesResistanceIsThatOfItsReflection() {
        Trace trace = trace(pulse, ideal, 75, new SeriesPart("r", 50, Lumped.resistor(10)));
        CursorPair pair = new CursorPair(trace, 45, 55);
        assertEquals(20 * Math.log10(16), pair.returnLoss(0).apparentDecibels(), 0.01);
        assertEquals(20 * Math.log10(16) - 6, pair.returnLoss(6).correctedDecibels(), 0.01);
        assertTrue(pair.returnLoss(0).isAboveNoise());
        // The peak of a Gaussian comes half its width after its half height.
        assertEquals(50 + 0.85 * LIGHT * 2.5e-9 / 2, pair.largestBetween().metres(), 0.05);
    }

    @Test
    void betweenCursorsWithNothingBetweenThemThereIsNoEcho() {
        Trace trace = trace(pulse, Instrument.usual(75), 75);
        assertFalse(new CursorPair(trace, 60, 70).returnLoss(0).isAboveNoise());
    }

    @Test
    void cursorsTellDistanceTimeAndDifference() {
        Trace step = trace(pulse.withStimulus(new RaisedCosineStep(1e-9)), ideal, 150);
        CursorPair pair = new CursorPair(step, 60, 120);
        assertEquals(60, pair.metresBetween(), 1e-12);
        assertEquals(120 / (0.85 * LIGHT), pair.secondsBetween(), 1e-18);
        assertEquals(1.0 / 3, pair.voltsBetween(), 1e-6);
    }

    @Test
    void reflectionBeyondOneAndImpossibleLinesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Reflection(1.01));
        assertThrows(IllegalArgumentException.class, () -> Reflection.ofImpedance(-1, 75));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.HalfSine;
import org.junit.jupiter.api.Test;

class TraceDifferenceTest {

    private static final double LIGHT = 299_792_458.0;
    private final Instrument instrument = Instrument.usual(75);
    private final Settings settings = new Settings(new GaussianPulse(5e-9), 0.85, 150, 0, 256);

    private SimulatedPort port(Event... events) {
        return new SimulatedPort(cable(lossless(75, 0.85 * LIGHT), 100, new FarEnd.Open(), events), 75);
    }

    private static SeriesPart resistor(double metres, double ohms) {
        return new SeriesPart("r" + (int) metres, metres, Lumped.resistor(ohms));
    }

    @Test
    void equalLinesDifferByTheirNoiseOnly() {
        Reflectometer reflectometer = new Reflectometer(instrument);
        TraceDifference difference = TraceDifference.of(
                reflectometer.measure(port(), settings, 1), reflectometer.measure(port(), settings, 2));
        double sum = 0;
        for (int i = 0; i < difference.count(); i++) {
            sum += difference.volts(i) * difference.volts(i);
        }
        double rms = Math.sqrt(sum / difference.count());
        assertEquals(difference.noiseVolts(), rms, 0.1 * rms);
        assertTrue(difference.firstMetres(5).isEmpty());
    }

    @Test
    void newFaultIsTheFirstDifference() {
        Reflectometer reflectometer = new Reflectometer(instrument);
        TraceDifference difference = TraceDifference.of(
                reflectometer.measure(port(resistor(30, 8), resistor(62, 4)), settings, 1),
                reflectometer.measure(port(resistor(30, 8)), settings, 2));
        assertEquals(62, difference.firstMetres(5).orElseThrow(), 0.5);
        // Beyond the new fault the open comes back smaller, which is the larger change, but no fault.
        assertTrue(difference.largest().metres() > 95);
    }

    @Test
    void tracesOfDifferentSampleDistancesAreLaidOnOneGrid() {
        Reflectometer reflectometer = new Reflectometer(instrument);
        Trace coarse = reflectometer.withoutNoise(port(resistor(30, 8)), settings.withRangeMetres(190));
        Trace fine = reflectometer.withoutNoise(port(resistor(30, 8)), settings);
        assertTrue(coarse.sampleSeconds() > 1.1 * fine.sampleSeconds());
        TraceDifference difference = TraceDifference.of(coarse, fine);
        for (int i = 0; i < difference.count(); i++) {
            assertEquals(0, difference.volts(i), 1e-3);
        }
        assertEquals(fine.metres(100), difference.metres(100), 0);
    }

    @Test
    void tracesOfDifferentPulsesAreRefused() {
        Reflectometer reflectometer = new Reflectometer(instrument);
        Trace other = reflectometer.withoutNoise(port(), settings.withStimulus(new HalfSine(5e-9)));
        Trace one = reflectometer.withoutNoise(port(), settings);
        assertThrows(IllegalArgumentException.class, () -> TraceDifference.of(other, one));
    }
}

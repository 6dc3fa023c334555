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
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.RectangularPulse;
import cablewright.simulator.wave.Stimulus;
import cablewright.simulator.wave.Waveform;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CandidateEventsTest {

    private static final double LIGHT = 299_792_458.0;
    private static final double SAMPLE = 0.5e-9;
    private static final Stimulus PULSE = new HalfSine(10e-9);

    /** A pulse that was sent, its echoes, and white noise: made from the stimulus alone, no line at all. */
    private static Trace made(long seed, double noise, double... secondsAndVolts) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] volts = new double[3000];
        for (int i = 0; i < volts.length; i++) {
            double time = i * SAMPLE;
            volts[i] = PULSE.at(time) + noise * random.nextGaussian();
            for (int k = 0; k < secondsAndVolts.length; k += 2) {
                volts[i] += secondsAndVolts[k + 1] * PULSE.at(time - secondsAndVolts[k]);
            }
        }
        Settings settings = new Settings(PULSE, 0.8, 170, 0, 1);
        return new Trace(
                settings, new Waveform(SAMPLE, volts), PULSE.halfHeightSeconds(), noise, Double.POSITIVE_INFINITY, 0);
    }

    @Property(tries = 60)
    void echoIsFoundWhereItIsAndAsHighAsItIs(
            @ForAll @IntRange(min = 1000, max = 13000) int tenthsOfNanoseconds,
            @ForAll @DoubleRange(min = 0.01, max = 0.9) double size,
            @ForAll boolean up,
            @ForAll @IntRange(min = 0, max = 1000) int seed) {
        double seconds = tenthsOfNanoseconds * 1e-10;
        double volts = up ? size : -size;
        List<CandidateEvent> candidates =
                CandidateEvents.on(made(seed, 0.0005, seconds, volts), new CandidateRules(1e-6, 2e-4, 0.005));
        assertEquals(1, candidates.size(), candidates.toString());
        CandidateEvent one = candidates.get(0);
        assertEquals(seconds, one.seconds().value(), 3 * one.seconds().uncertainty());
        assertEquals(seconds, one.seconds().value(), 1e-9);
        assertEquals(volts, one.heightVolts().value(), 0.03 * size + 0.0015);
        assertEquals(up ? CandidateShape.UP : CandidateShape.DOWN, one.shape());
        assertEquals(up ? 1 : -1, one.sign());
    }

    @Property(tries = 60)
    void movingTheLineByWholeSamplesMovesTheCandidatesAsFar(
            @ForAll @IntRange(min = 20, max = 400) int shift, @ForAll @IntRange(min = 0, max = 1000) int seed) {
        double by = shift * SAMPLE;
        List<CandidateEvent> near = CandidateEvents.on(made(seed, 0, 200e-9, 0.2, 420e-9, -0.1));
        List<CandidateEvent> far = CandidateEvents.on(made(seed, 0, 200e-9 + by, 0.2, 420e-9 + by, -0.1));
        assertEquals(2, near.size());
        assertEquals(2, far.size());
        for (int i = 0; i < 2; i++) {
            assertEquals(
                    near.get(i).seconds().value() + by, far.get(i).seconds().value(), 0.02e-9);
            assertEquals(
                    near.get(i).heightVolts().value(), far.get(i).heightVolts().value(), 1e-4);
            assertEquals(near.get(i).shape(), far.get(i).shape());
        }
    }

    /** Twice the voltage, and twice the noise: the same places, twice as high. */
    @Property(tries = 40)
    void scaleIsKept(
            @ForAll @DoubleRange(min = 0.1, max = 3) double scale, @ForAll @IntRange(min = 0, max = 99) int seed) {
        Trace trace = made(seed, 0.001, 300e-9, 0.05, 600e-9, -0.3);
        double[] volts = trace.copyOfVolts();
        for (int i = 0; i < volts.length; i++) {
            double sent = PULSE.at(i * SAMPLE);
            volts[i] = sent + scale * (volts[i] - sent);
        }
        Trace scaled = new Trace(
                trace.settings(),
                new Waveform(SAMPLE, volts),
                trace.zeroSeconds(),
                0.001 * scale,
                Double.POSITIVE_INFINITY,
                0);
        CandidateRules rules = CandidateRules.usual().withLeastVolts(0);
        List<CandidateEvent> before = CandidateEvents.on(trace, rules);
        List<CandidateEvent> after = CandidateEvents.on(scaled, rules);
        assertEquals(before.size(), after.size());
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i).seconds().value(), after.get(i).seconds().value(), 0.3e-9);
            double expected = scale * before.get(i).heightVolts().value();
            assertEquals(expected, after.get(i).heightVolts().value(), 0.01 * Math.abs(expected) + 1e-3 * scale);
        }
    }

    /** The rate that the rules state is a bound: three standard deviations of a Poisson count are allowed above it. */
    @Test
    void noiseAlonePassesNoMoreOftenThanStated() {
        double stated = 0.3;
        CandidateRules rules = new CandidateRules(stated, 0, 0);
        int traces = 400;
        int alarms = 0;
        for (int seed = 0; seed < traces; seed++) {
            alarms += CandidateEvents.on(made(seed, 0.004), rules).size();
        }
        double most = stated * traces;
        assertTrue(alarms <= most + 3 * Math.sqrt(most), alarms + " alarms in " + traces + " traces");
        assertTrue(alarms >= most / 10, alarms + " alarms: the bound would be of no use");
    }

    @Test
    void sameTraceGivesTheSameCandidates() {
        Trace trace = made(5, 0.002, 250e-9, 0.03, 500e-9, -0.02);
        assertEquals(CandidateEvents.on(trace), CandidateEvents.on(trace));
    }

    /** Closed forms: series R shows R/(R + 2 Z0), the open after it what passed twice, 1 − ρ² of it; lossless 75 Ω line. */
    @Test
    void everyStimulusTellsTheSamePlacesOfASimulatedLine() {
        Event part = new SeriesPart("r", 40, Lumped.resistor(30));
        SimulatedPort port = new SimulatedPort(cable(lossless(75, 0.8 * LIGHT), 100, new FarEnd.Open(), part), 75);
        double rho = 30.0 / (30 + 150);
        for (Stimulus stimulus : List.of(
                new HalfSine(5e-9),
                new GaussianPulse(5e-9),
                new RectangularPulse(8e-9, 2e-9),
                new GaussianStep(2e-9),
                new RaisedCosineStep(2e-9))) {
            Settings settings = new Settings(stimulus, 0.8, 120, 0, 256);
            Trace trace = new Reflectometer(Instrument.usual(75)).measure(port, settings, 7);
            List<CandidateEvent> candidates = CandidateEvents.on(trace);
            assertEquals(2, candidates.size(), stimulus + ": " + candidates);
            assertEquals(40, candidates.get(0).metres().value(), 0.15, stimulus.toString());
            assertEquals(100, candidates.get(1).metres().value(), 0.15, stimulus.toString());
            assertEquals(rho, candidates.get(0).heightVolts().value(), 0.01, stimulus.toString());
            assertEquals(CandidateShape.UP, candidates.get(0).shape(), stimulus.toString());
        }
    }

    /** A short capacitance to the other conductor goes down and comes back, on a step as on a pulse. */
    @Test
    void capacitanceGoesDownAndBack() {
        Event part = new ShuntPart("c", 40, Lumped.capacitor(3e-12));
        SimulatedPort port =
                new SimulatedPort(cable(lossless(75, 0.8 * LIGHT), 100, FarEnd.Terminated.byOhms(75), part), 75);
        for (Stimulus stimulus : List.of(new HalfSine(5e-9), new GaussianStep(2e-9))) {
            Settings settings = new Settings(stimulus, 0.8, 120, 0, 256);
            Trace trace = new Reflectometer(Instrument.usual(75)).measure(port, settings, 7);
            List<CandidateEvent> candidates = CandidateEvents.on(trace);
            assertEquals(1, candidates.size(), stimulus + ": " + candidates);
            assertEquals(CandidateShape.DOWN_AND_BACK, candidates.get(0).shape(), stimulus.toString());
            assertEquals(40, candidates.get(0).metres().value(), 0.3, stimulus.toString());
        }
    }

    @Test
    void whatIsLeastIsNotTold() {
        Trace trace = made(1, 0, 300e-9, 0.01);
        assertEquals(1, CandidateEvents.on(trace).size());
        assertEquals(
                0,
                CandidateEvents.on(trace, CandidateRules.usual().withLeastVolts(0.02))
                        .size());
        assertThrows(IllegalArgumentException.class, () -> new CandidateRules(0, 0, 0));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

class ReflectometerTest {

    private static final double LIGHT = 299_792_458.0;
    private final PortResponse open = new SimulatedPort(cable(lossless(75, 0.85 * LIGHT), 100, new FarEnd.Open()), 75);
    private final PortResponse matched =
            new SimulatedPort(cable(lossless(75, 0.85 * LIGHT), 100, FarEnd.Terminated.byOhms(75)), 75);
    private final Instrument instrument = Instrument.usual(75);
    private final Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 0, 1);

    /** d = VoP c t/2; an open 100 m away shows at 100 m whatever the pulse, and at 96.47 m with 0.82 set (physics of §14). */
    @Test
    void openShowsAtItsDistanceTimesTheErrorOfVelocity() {
        for (double width : new double[] {2e-9, 10e-9, 100e-9}) {
            assertEquals(100, halfHeightOfEcho(settings.withStimulus(new GaussianPulse(width))), 0.01 + width * 1e6);
            assertEquals(
                    96.470588,
                    halfHeightOfEcho(
                            settings.withStimulus(new GaussianPulse(width)).withVelocityFraction(0.82)),
                    0.01 + width * 1e6);
        }
    }

    private double halfHeightOfEcho(Settings used) {
        Trace trace = new Reflectometer(instrument).withoutNoise(open, used);
        int peak = trace.indexNear(60);
        for (int i = peak; i < trace.count(); i++) {
            peak = trace.volts(i) > trace.volts(peak) ? i : peak;
        }
        int i = peak;
        while (trace.volts(i) > trace.volts(peak) / 2) {
            i--;
        }
        double share = (trace.volts(peak) / 2 - trace.volts(i)) / (trace.volts(i + 1) - trace.volts(i));
        return trace.metres(i) + share * (trace.metres(i + 1) - trace.metres(i));
    }

    @Test
    void noiseHasItsStatedSizeAndAveragesDownWithTheRoot() {
        for (int averages : new int[] {1, 16, 256}) {
            Trace trace = new Reflectometer(instrument).measure(matched, settings.withAverages(averages), 42);
            DescriptiveStatistics far = new DescriptiveStatistics();
            for (int i = trace.indexNear(50); i < trace.count(); i++) {
                far.addValue(trace.volts(i));
            }
            assertEquals(
                    instrument.noiseVolts() / Math.sqrt(averages),
                    far.getStandardDeviation(),
                    0.08 * instrument.noiseVolts() / Math.sqrt(averages));
        }
    }

    @Test
    void sameSeedGivesTheSameTraceAndAnotherSeedAnother() {
        Reflectometer reflectometer = new Reflectometer(instrument);
        double[] first = reflectometer.measure(open, settings, 7).copyOfVolts();
        assertArrayEquals(first, reflectometer.measure(open, settings, 7).copyOfVolts());
        double[] other = reflectometer.measure(open, settings, 8).copyOfVolts();
        assertTrue(first[2000] != other[2000] || first[2001] != other[2001]);
    }

    @Test
    void gainClipsTheOutgoingPulseAndFinerStepsRemain() {
        Trace trace = new Reflectometer(instrument).measure(open, settings.withGainDecibels(20), 1);
        double most = 0;
        for (int i = 0; i < trace.count(); i++) {
            most = Math.max(most, Math.abs(trace.volts(i)));
        }
        assertEquals(0.125, most, 1e-12);
        assertEquals(0.125, trace.clipVolts(), 1e-12);
    }

    @Test
    void fewBitsWithoutNoiseRoundToWholeSteps() {
        Instrument coarse = new Instrument(75, 1e9, 1, 0, 1e-9, 0, 4, 1, 1024, 0, Interference.none());
        Trace trace = new Reflectometer(coarse).measure(open, settings.withAverages(1024), 1);
        for (int i = 0; i < trace.count(); i++) {
            double steps = trace.volts(i) / trace.stepVolts();
            assertEquals(Math.rint(steps), steps, 1e-9);
        }
    }

    @Test
    void stepOnAMatchedLineShowsZeroAndOnAnOpenLineOne() {
        Settings step = settings.withStimulus(new RaisedCosineStep(1e-9));
        Instrument ideal = new Instrument(75, 1e10, 1, 0, 1e-9, 0, 24, 1.25, 4096, 0, Interference.none());
        assertEquals(0, new Reflectometer(ideal).withoutNoise(matched, step).voltsAt(50), 1e-6);
        assertEquals(1, new Reflectometer(ideal).withoutNoise(open, step).voltsAt(120), 1e-6);
    }

    @Test
    void hybridTakesTheOutgoingPulseOffTheTrace() {
        Instrument balanced = new Instrument(75, 1e9, 0.01, 0, 1e-9, 0, 16, 1.25, 4096, 0, Interference.none());
        Trace trace = new Reflectometer(balanced).withoutNoise(matched, settings);
        double most = 0;
        for (int i = 0; i < trace.count(); i++) {
            most = Math.max(most, trace.volts(i));
        }
        assertEquals(0.01, most, 5e-4);
    }

    @Test
    void slowClockShowsDistancesTooShort() {
        Instrument slow = new Instrument(75, 1e9, 1, 0, 1e-9, 0, 16, 1.25, 4096, 0.02, Interference.none());
        Trace trace = new Reflectometer(slow).withoutNoise(open, settings);
        int peak = trace.indexNear(60);
        for (int i = peak; i < trace.count(); i++) {
            peak = trace.volts(i) > trace.volts(peak) ? i : peak;
        }
        Trace right = new Reflectometer(Instrument.usual(75)).withoutNoise(open, settings);
        int rightPeak = right.indexNear(60);
        for (int i = rightPeak; i < right.count(); i++) {
            rightPeak = right.volts(i) > right.volts(rightPeak) ? i : rightPeak;
        }
        assertEquals(right.metres(rightPeak) / 1.02, trace.metres(peak), 0.1);
    }

    @Test
    void radioAveragesDownWithTheRootAndImpulsesWithTheCount() {
        Instrument quiet = new Instrument(75, 1e9, 1, 0, 1e-9, 0, 24, 1.25, 4096, 0, Interference.none());
        Instrument radio = quiet.with(new Interference(0, 50, 0.1, 2e7, 0, 0));
        double once = 0;
        double often = 0;
        for (int seed = 0; seed < 40; seed++) {
            once += power(radio, 1, seed);
            often += power(radio, 100, seed);
        }
        assertEquals(100, once / often, 35);
        Instrument sparks = quiet.with(new Interference(0, 50, 0, 1e6, 0.5, 1e6));
        double most = 0;
        double least = 0;
        for (int seed = 0; seed < 40; seed++) {
            most = Math.max(most, power(sparks, 1, seed));
            least = Math.max(least, power(sparks, 64, seed));
        }
        assertTrue(most > 10 * least, most + " against " + least);
    }

    private double power(Instrument used, int averages, long seed) {
        Settings set = settings.withAverages(averages);
        Trace noisy = new Reflectometer(used).measure(matched, set, seed);
        Trace clean = new Reflectometer(used).withoutNoise(matched, set);
        double sum = 0;
        for (int i = 0; i < noisy.count(); i++) {
            sum += Math.pow(noisy.volts(i) - clean.volts(i), 2);
        }
        return sum;
    }

    @Test
    void sourceThatIsNotThePortsIsRefused() {
        Reflectometer other = new Reflectometer(Instrument.usual(50));
        assertThrows(IllegalArgumentException.class, () -> other.withoutNoise(open, settings));
    }
}

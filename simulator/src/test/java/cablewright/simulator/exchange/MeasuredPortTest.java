// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.constants;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Interference;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.RaisedCosineStep;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A sweep of a known line, read back as if it had been measured, against the line itself. */
class MeasuredPortTest {

    private static final double TOP_HERTZ = 1e9;

    private static Cable line(FarEnd end) {
        return cable(
                constants(0.02, 3.0e-7, 1.2e-5, 0, 5.15e-11),
                20,
                end,
                new ShuntPart("c", 8, Lumped.capacitor(10e-12)),
                new SeriesPart("r", 12, Lumped.resistor(10)));
    }

    private static double[] sweep(int count, double first) {
        double[] hertz = new double[count];
        for (int k = 0; k < count; k++) {
            hertz[k] = (k + first) * TOP_HERTZ / count;
        }
        return hertz;
    }

    private static MeasuredPort measured(FarEnd end, double[] hertz, double sourceOhms, OptionalDouble dc) {
        ComplexArray gamma = new SimulatedPort(line(end), 75).sweep(hertz);
        return MeasuredPort.of(hertz, gamma, 75, sourceOhms, dc);
    }

    private static double worst(FarEnd end, double[] hertz, double sourceOhms) {
        Reflectometer reflectometer = new Reflectometer(
                new Instrument(sourceOhms, 1e12, 1, 0, 1e-9, 0.004, 12, 1.25, 4096, 0, Interference.none()));
        Settings settings = new Settings(new RaisedCosineStep(3.6e-9), 0.85, 40, 0, 1);
        Trace real = reflectometer.withoutNoise(new SimulatedPort(line(end), sourceOhms), settings);
        Trace read = reflectometer.withoutNoise(measured(end, hertz, sourceOhms, OptionalDouble.empty()), settings);
        double worst = 0;
        for (double x = -0.5; x < 40; x += 0.05) {
            worst = Math.max(worst, Math.abs(real.voltsAt(x) - read.voltsAt(x)));
        }
        return worst;
    }

    /** The bound is the one that the documentation of the class states. */
    @Test
    void traceOfASweepIsTheTraceOfTheLineWithinTwoInAThousand() {
        for (FarEnd end : new FarEnd[] {new FarEnd.Open(), new FarEnd.Short(), FarEnd.Terminated.byOhms(100)}) {
            for (double sourceOhms : new double[] {50, 75, 100}) {
                assertEquals(0, worst(end, sweep(4000, 1), sourceOhms), 1e-3);
                assertEquals(0, worst(end, sweep(1000, 1), sourceOhms), 2e-3);
            }
        }
    }

    /** Frequencies beside the multiples of the step: values between are taken, at some cost. */
    @Test
    void sweepOfOtherFrequenciesServesToo() {
        assertEquals(0, worst(new FarEnd.Open(), sweep(4000, 0.4), 75), 1e-3);
        assertEquals(0, worst(new FarEnd.Open(), sweep(1000, 0.4), 75), 5e-3);
        assertTrue(measured(new FarEnd.Open(), sweep(1000, 0.4), 75, OptionalDouble.empty())
                .report()
                .resampled());
    }

    /** At 0 Hz the line is R l and the parts in series with its end: (0.4 + 10 + 100 − 75)/(0.4 + 10 + 100 + 75). */
    @Test
    void reflectionAtZeroIsThatOfTheResistances() {
        double[] hertz = sweep(4000, 1);
        assertEquals(
                (110.4 - 75) / (110.4 + 75),
                measured(FarEnd.Terminated.byOhms(100), hertz, 75, OptionalDouble.empty())
                        .report()
                        .dcReflection(),
                2e-3);
        assertEquals(
                1,
                measured(new FarEnd.Open(), hertz, 75, OptionalDouble.empty())
                        .report()
                        .dcReflection(),
                2e-3);
        assertEquals(
                (10.4 - 75) / (10.4 + 75),
                measured(new FarEnd.Short(), hertz, 75, OptionalDouble.empty())
                        .report()
                        .dcReflection(),
                5e-3);
    }

    /** Sweeps that start some steps up lose little. */
    @Test
    void severalMissingPointsAreFoundByTheQuietEnd() {
        SweepReport report = measured(new FarEnd.Open(), sweep(4000, 6), 75, OptionalDouble.empty())
                .report();
        assertEquals(6, report.addedPoints());
        assertEquals(1, report.dcReflection(), 0.02);
        assertEquals(0, worst(new FarEnd.Open(), sweep(4000, 6), 75), 3e-3);
    }

    @Test
    void knownReflectionAtZeroIsTaken() {
        SweepReport report = measured(new FarEnd.Open(), sweep(1000, 1), 75, OptionalDouble.of(0.5))
                .report();
        assertEquals(0.5, report.dcReflection());
        assertEquals(0, report.dcDoubt());
    }

    @Test
    void responseThatRunsBackwardsInTimeIsNotCausal() {
        double[] hertz = sweep(1000, 1);
        ComplexArray gamma = new SimulatedPort(line(new FarEnd.Open()), 75).sweep(hertz);
        double[] turned = gamma.copyOfImaginary();
        for (int k = 0; k < turned.length; k++) {
            turned[k] = -turned[k];
        }
        SweepReport sound =
                MeasuredPort.of(hertz, gamma, 75, 75, OptionalDouble.empty()).report();
        SweepReport backwards = MeasuredPort.of(
                        hertz, ComplexArray.takingOver(gamma.copyOfReal(), turned), 75, 75, OptionalDouble.empty())
                .report();
        assertTrue(sound.isCausal(1e-3) && sound.isPassive(1e-9));
        assertTrue(!backwards.isCausal(0.01), "share before zero " + backwards.shareBeforeZero());
    }

    @Test
    void onlyItsOwnGridIsAnswered() {
        MeasuredPort port = measured(new FarEnd.Open(), sweep(1000, 1), 75, OptionalDouble.empty());
        ContourGrid own = port.nativeGrid().orElseThrow();
        assertEquals(10, port.reflection(own, 10).count());
        ContourGrid other = new ContourGrid(own.dampingPerSecond(), own.periodSeconds(), 2 * own.samples());
        assertThrows(IllegalArgumentException.class, () -> port.reflection(other, 10));
    }

    /** On the contour |Γ| stays below 1, for a passive line, and tends to the reflection at 0 Hz damped. */
    @Test
    void responseOnTheContourIsThatOfTheLine() {
        MeasuredPort port = measured(FarEnd.Terminated.byOhms(100), sweep(4000, 1), 75, OptionalDouble.empty());
        ContourGrid grid = port.nativeGrid().orElseThrow();
        int count = grid.frequencies() / 4;
        ComplexArray read = port.reflection(grid, count);
        ComplexArray real = new SimulatedPort(line(FarEnd.Terminated.byOhms(100)), 75).reflection(grid, count);
        for (int k = 0; k < count; k++) {
            assertEquals(real.re(k), read.re(k), 2e-4);
            assertEquals(real.im(k), read.im(k), 2e-4);
        }
    }

    @Test
    void instrumentRefusesRangesAndPulsesThatTheSweepCannotTell() {
        MeasuredPort port = measured(new FarEnd.Open(), sweep(1000, 1), 75, OptionalDouble.empty());
        Reflectometer reflectometer =
                new Reflectometer(new Instrument(75, 1e12, 1, 0, 1e-9, 0.004, 12, 1.25, 4096, 0, Interference.none()));
        Settings fits = new Settings(new RaisedCosineStep(4e-9), 0.85, 100, 0, 1);
        reflectometer.withoutNoise(port, fits);
        String range = assertThrows(
                        IllegalArgumentException.class,
                        () -> reflectometer.withoutNoise(port, fits.withRangeMetres(200)))
                .getMessage();
        assertTrue(range.contains("rangeMetres is 200") && range.contains("at most 12"), range);
        String edge = assertThrows(
                        IllegalArgumentException.class,
                        () -> reflectometer.withoutNoise(port, fits.withStimulus(new RaisedCosineStep(1e-9))))
                .getMessage();
        assertTrue(edge.contains("use a wider pulse"), edge);
    }

    @Test
    void sweepsTooShortOrTooLongAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> measured(new FarEnd.Open(), sweep(3, 1), 75, OptionalDouble.empty()));
        assertThrows(
                IllegalArgumentException.class,
                () -> measured(new FarEnd.Open(), sweep(50, 1), 0, OptionalDouble.empty()));
        assertThrows(
                IllegalArgumentException.class,
                () -> measured(new FarEnd.Open(), sweep(50, 1), 75, OptionalDouble.of(1.5)));
        double[] hertz = {1, 2, 3, 4, 5, 1e7, 1e7 + 1};
        ComplexArray nothing = ComplexArray.takingOver(new double[7], new double[7]);
        MeasuredPort.of(hertz, nothing, 75, 75, OptionalDouble.empty());
        double[] far = {1e9, 1e9 + 1, 1e9 + 2, 1e9 + 3, 1e9 + 4};
        ComplexArray little = ComplexArray.takingOver(new double[5], new double[5]);
        assertThrows(
                IllegalArgumentException.class, () -> MeasuredPort.of(far, little, 75, 75, OptionalDouble.empty()));
    }
}

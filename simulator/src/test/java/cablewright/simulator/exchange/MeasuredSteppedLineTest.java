// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.exchange.touchstone.TouchstoneReader;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Interference;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.reading.PeeledProfile;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Waveform;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * A line measured by others, of known widths and lengths: its sections come out in their order, at their distances, and with
 * their impedances.
 *
 * <p>The files and what is known of the line: measured-stepped-line/LICENSE.txt. The example that they come from finds its
 * own model of the line within ±5 % of the measurement in time, and 8 mm of resolution.
 */
class MeasuredSteppedLineTest {

    private static final double LIGHT = 299_792_458.0;
    private static final double SUBSTRATE_METRES = 1.55e-3;
    private static final double COPPER_METRES = 50e-6;

    /** Permittivity of FR-4 (common practice, no source); the example starts its own fit at 4.5 and allows 4 to 5. */
    private static final double PERMITTIVITY = 4.4;

    private static MeasuredPort port(String file, int port) throws IOException {
        String path = "measured-stepped-line/" + file;
        try (InputStream in = MeasuredSteppedLineTest.class.getResourceAsStream(path)) {
            return MeasuredPort.of(TouchstoneReader.read(file, in), port);
        }
    }

    /** The answer to a step as steep as the sweep's 10 GHz allow: 0.1 ns from 10 to 90 %. */
    private static double[] impedances(MeasuredPort port, int layers) {
        return LayerPeeling.impedances(answer(port), 50, layers);
    }

    private static Waveform answer(MeasuredPort port) {
        return PortVoltage.on(port.nativeGrid().orElseThrow(), port, new RaisedCosineStep(0.06e-9))
                .reflected();
    }

    private static double sampleSeconds(MeasuredPort port) {
        return port.nativeGrid().orElseThrow().sampleSeconds();
    }

    /**
     * Microstrip without dispersion: Hammerstad and Jensen, Accurate Models for Microstrip Computer-Aided Design, IEEE MTT-S
     * Digest 1980, 407–409, with their correction for the thickness of the strip (from memory).
     *
     * @return impedance and effective permittivity
     */
    private static double[] microstrip(double widthMetres) {
        double u = widthMetres / SUBSTRATE_METRES;
        double t = COPPER_METRES / SUBSTRATE_METRES;
        double coth = 1 / Math.tanh(Math.sqrt(6.517 * u));
        double wider = t / Math.PI * Math.log(1 + 4 * Math.E / (t * coth * coth));
        double inDielectric = 0.5 * (1 + 1 / Math.cosh(Math.sqrt(PERMITTIVITY - 1))) * wider;
        double z = inAir(u + inDielectric);
        double e = effective(u + inDielectric);
        double air = inAir(u + wider) / z;
        return new double[] {z / Math.sqrt(e), e * air * air};
    }

    private static double inAir(double u) {
        double f = 6 + (2 * Math.PI - 6) * Math.exp(-Math.pow(30.666 / u, 0.7528));
        return 376.730313412 / (2 * Math.PI) * Math.log(f / u + Math.sqrt(1 + 4 / (u * u)));
    }

    private static double effective(double u) {
        double a = 1
                + Math.log((Math.pow(u, 4) + Math.pow(u / 52, 2)) / (Math.pow(u, 4) + 0.432)) / 49
                + Math.log(1 + Math.pow(u / 18.1, 3)) / 18.7;
        double b = 0.564 * Math.pow((PERMITTIVITY - 0.9) / (PERMITTIVITY + 3), 0.053);
        return (PERMITTIVITY + 1) / 2 + (PERMITTIVITY - 1) / 2 * Math.pow(1 + 10 / u, -a * b);
    }

    /** The data's notes: effective permittivity about 3.1 to 3.6 depending on width. */
    @Test
    void modelOfTheLineHasTheStatedPermittivities() {
        assertEquals(3.6, microstrip(8e-3)[1], 0.1);
        assertEquals(3.1, microstrip(1e-3)[1], 0.1);
    }

    @Test
    void wideSectionIsLowAndNarrowSectionHighWithinFivePercentFromBothEnds() throws IOException {
        double wide = microstrip(8e-3)[0];
        double narrow = microstrip(1e-3)[0];
        double[] first = impedances(port("stepped-line.s2p", 1), 50);
        double[] second = impedances(port("stepped-line.s2p", 2), 50);
        int low = indexOfLowest(first);
        int high = indexOfHighest(first);
        assertTrue(low < high, "from port 1 the low section comes first");
        assertEquals(wide, median(first, low, low + 3), 0.05 * wide);
        assertEquals(narrow, median(first, high - 1, high + 1), 0.05 * narrow);
        int highBack = indexOfHighest(second);
        int lowBack = indexOfLowest(second);
        assertTrue(highBack < lowBack, "from port 2 the high section comes first");
        assertEquals(narrow, median(second, highBack, highBack + 2), 0.05 * narrow);
        assertEquals(wide, median(second, lowBack - 1, lowBack + 1), 0.05 * wide);
    }

    @Test
    void sectionBeforeTheStepsHasItsImpedanceWithinFivePercent() throws IOException {
        double line = microstrip(3e-3)[0];
        double[] first = impedances(port("stepped-line.s2p", 1), 30);
        double[] open = impedances(port("open-line.s1p", 1), 22);
        assertEquals(line, median(first, 9, 21), 0.05 * line);
        assertEquals(line, median(open, 9, 21), 0.05 * line);
    }

    /** Where the impedance crosses the middle between two sections; half of the published resolution is allowed. */
    @Test
    void sectionsAreTwentyMillimetresLongEach() throws IOException {
        MeasuredPort port = port("stepped-line.s2p", 1);
        double[] z = impedances(port, 50);
        int low = indexOfLowest(z);
        int high = indexOfHighest(z);
        double down = crossing(z, low, -1, (49 + 25) / 2.0);
        double up = crossing(z, low, 1, (25 + 84) / 2.0);
        double downAgain = crossing(z, high, 1, (84 + 49) / 2.0);
        double dt = sampleSeconds(port);
        double wide = (up - down) * dt * LIGHT / (2 * Math.sqrt(microstrip(8e-3)[1]));
        double narrow = (downAgain - up) * dt * LIGHT / (2 * Math.sqrt(microstrip(1e-3)[1]));
        assertEquals(0.020, wide, 0.004);
        assertEquals(0.020, narrow, 0.004);
        assertEquals(0.040, wide + narrow, 0.002);
    }

    /** The launch shows as a rise of 1 to 5 % before the line settles. */
    @Test
    void connectorIsASmallRise() throws IOException {
        for (MeasuredPort port : new MeasuredPort[] {port("stepped-line.s2p", 1), port("open-line.s1p", 1)}) {
            double[] z = impedances(port, 21);
            double top = Arrays.stream(z, 0, 8).max().orElseThrow();
            double line = median(z, 9, 21);
            assertTrue(top > 1.01 * line && top < 1.08 * line, top + " against " + line);
        }
    }

    /** 50 mm of line and the connector before an open end: all but the line's loss comes back, once and for all. */
    @Test
    void openLineEndsInAnOpen() throws IOException {
        MeasuredPort port = port("open-line.s1p", 1);
        Waveform answer = answer(port);
        double half = 0;
        for (int i = 0; half == 0; i++) {
            half = answer.sample(i) >= 0.5 ? answer.time(i) : 0;
        }
        double delay = 2 * 0.05 * Math.sqrt(microstrip(3e-3)[1]) / LIGHT;
        assertTrue(half > delay && half < delay + 0.2e-9, half + " s against " + delay + " s without the connector");
        assertEquals(1, answer.at(3e-9), 0.02);
        assertEquals(1, answer.at(20e-9), 0.02);
    }

    /** The open line's lowest points lie above 1 by up to 0.5 %: an error of calibration that the report tells. */
    @Test
    void reportTellsWhatIsAmissWithTheMeasurement() throws IOException {
        SweepReport open = port("open-line.s1p", 1).report();
        assertEquals(10_000, open.frequencies());
        assertEquals(1e6, open.spacingHertz(), 1e-3);
        assertEquals(1, open.addedPoints());
        assertEquals(1.00443, open.largestMagnitude(), 1e-5);
        assertEquals(1e6, open.largestAtHertz(), 1e-3);
        assertTrue(!open.isPassive(0.001) && open.isPassive(0.005));
        assertTrue(open.isCausal(1e-3));
        assertEquals(1, open.dcReflection(), 0.01);
        SweepReport stepped = port("stepped-line.s2p", 1).report();
        assertTrue(stepped.isPassive(0) && stepped.isCausal(1e-3));
        assertEquals(0, stepped.dcReflection(), 0.01);
    }

    /** The instrument reads the sweep as it reads any line. */
    @Test
    void reflectometerShowsTheSections() throws IOException {
        MeasuredPort port = port("stepped-line.s2p", 1);
        Instrument instrument = new Instrument(50, 50e9, 1, 0, 1e-9, 0.001, 14, 1.25, 1024, 0, Interference.none());
        Settings settings = new Settings(new RaisedCosineStep(0.15e-9), 0.55, 0.4, 0, 16);
        Trace trace = new Reflectometer(instrument).measure(port, settings, 7);
        // As many samples as the instrument has, and less than twice as many: one in so many of the sweep's own.
        assertTrue(trace.count() >= 1024 && trace.count() < 2048, "samples " + trace.count());
        assertTrue(trace.metres(trace.count() - 1) > 0.4);
        double lowest = 0;
        double highest = 0;
        for (double x = 0.03; x < 0.2; x += 0.001) {
            lowest = trace.voltsAt(x) < trace.voltsAt(lowest) || lowest == 0 ? x : lowest;
            highest = trace.voltsAt(x) > trace.voltsAt(highest) || highest == 0 ? x : highest;
        }
        assertTrue(lowest < highest);
        // Between the middles of the two sections: 20 mm, shown at the set velocity.
        assertEquals(0.020, highest - lowest, 0.005);
    }

    /** What a reading peels from a simulated port it peels from the measured one. */
    @Test
    void peeledProfileShowsTheSections() throws IOException {
        PeeledProfile profile = PeeledProfile.of(port("stepped-line.s2p", 1), 0.25e-9, 2e-9);
        double lowest = 0.3e-9;
        double highest = 0.3e-9;
        for (double t = 0.3e-9; t < 1.6e-9; t += 0.05e-9) {
            lowest = profile.ohmsAt(t) < profile.ohmsAt(lowest) ? t : lowest;
            highest = profile.ohmsAt(t) > profile.ohmsAt(highest) ? t : highest;
        }
        assertTrue(lowest < highest && profile.ohmsAt(lowest) < 32 && profile.ohmsAt(highest) > 62, profile.toString());
    }

    private static int indexOfLowest(double[] z) {
        int best = 0;
        for (int i = 0; i < z.length; i++) {
            best = z[i] < z[best] ? i : best;
        }
        return best;
    }

    private static int indexOfHighest(double[] z) {
        int best = 0;
        for (int i = 0; i < z.length; i++) {
            best = z[i] > z[best] ? i : best;
        }
        return best;
    }

    private static double median(double[] values, int from, int to) {
        double[] some = Arrays.copyOfRange(values, from, to + 1);
        Arrays.sort(some);
        return (some[(some.length - 1) / 2] + some[some.length / 2]) / 2;
    }

    private static double crossing(double[] z, int from, int direction, double level) {
        int i = from;
        boolean above = z[from] > level;
        while ((z[i] > level) == above) {
            i += direction;
        }
        return i - direction * (level - z[i]) / (z[i - direction] - z[i]);
    }
}

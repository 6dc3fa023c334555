// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BumpsOfNoisyTracesTest {

    private static final Instrument USUAL = Instrument.usual(75);

    private static Trace trace(Cable cable, Settings settings, long seed) {
        return new Reflectometer(USUAL).measure(new SimulatedPort(cable, 75), settings, seed);
    }

    private static Attribution attribution(Cable cable, Trace trace) {
        return Attribution.ofTrace(cable, USUAL, trace, LineEnd.NEAR, () -> false);
    }

    private static Cable dropCable() {
        return cable(
                Catalogue.standard().type("drop-6-foam"),
                133,
                new FarEnd.Open(),
                new Splice("s", 31, 5e-9, 0, 0.01),
                new Tap("t", 58, 75, 0.8, 1.5e-12, 1e6),
                new TouchingConductors("leak", 100, OptionalDouble.of(400)));
    }

    /** The bound of the false alarms is one trace in a thousand; of 300 traces, none to two are to be expected. */
    @Test
    void noiseAloneIsNoBump() {
        Cable plain = cable(lossless(75, 2e8), 200, FarEnd.Terminated.byOhms(75));
        int alarms = 0;
        int traces = 0;
        for (double width : new double[] {2e-9, 10e-9, 100e-9}) {
            Settings settings = new Settings(new HalfSine(width), 0.667, 150, 0, 16);
            PathSearch search = new PathSearch(plain, USUAL, settings, 400, () -> false);
            for (long seed = 0; seed < 100; seed++) {
                Trace noisy = trace(plain, settings, seed);
                alarms += search.attribution(Optional.of(noisy)).bumps().size();
                traces++;
            }
        }
        assertEquals(300, traces);
        assertTrue(alarms <= 2, alarms + " bumps of noise");
    }

    /** The root mean square of the evened noise is what it is said to be. */
    @Test
    void noiseThatIsLeftHasItsStatedSize() {
        Cable plain = cable(lossless(75, 2e8), 200, FarEnd.Terminated.byOhms(75));
        Settings settings = new Settings(new HalfSine(50e-9), 0.667, 150, 0, 16);
        NoiseAveraging evening = new NoiseAveraging(
                new Reflectometer(USUAL).withoutNoise(new SimulatedPort(plain, 75), settings), USUAL);
        double sum = 0;
        int count = 0;
        for (long seed = 0; seed < 40; seed++) {
            Trace noisy = trace(plain, settings, seed);
            double[] even = evening.of(noisy.copyOfVolts());
            for (int i = even.length / 3; i < even.length - 50; i++) {
                sum += even[i] * even[i];
                count++;
            }
        }
        double ratio = Math.sqrt(sum / count) / evening.noiseVolts();
        assertEquals(1, ratio, 0.02);
        assertTrue(evening.noiseVolts() < USUAL.noiseVoltsAfter(16) / 2, "evened noise " + evening.noiseVolts());
    }

    @Test
    void everyBumpOfANoisyTraceIsExplainedButForItsNoise() {
        Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 0, 16);
        for (long seed = 1; seed <= 20; seed++) {
            Attribution attribution = attribution(dropCable(), trace(dropCable(), settings, seed));
            assertTrue(attribution.bumps().size() >= 4, "bumps " + attribution.bumps());
            for (Bump bump : attribution.bumps()) {
                boolean isOfTheNoise = Math.abs(bump.unexplainedVolts()) < 6 * bump.noiseVolts();
                assertTrue(bump.isExplained() || isOfTheNoise, seed + ": " + bump);
            }
            for (Reflector at : List.of(
                    Reflector.event("s"), Reflector.event("t"), Reflector.event("leak"), new Reflector.EndOfLine())) {
                assertTrue(
                        attribution.bumps().stream().anyMatch(bump -> bump.shares()
                                .get(0)
                                .path()
                                .turns()
                                .get(0)
                                .at()
                                .equals(at)),
                        seed + ": no bump of " + at);
            }
        }
    }

    @Test
    void bumpOfWhatIsNotInTheCableIsExplainedByNoPath() {
        Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 0, 64);
        Cable known = dropCable();
        Cable real = cable(
                Catalogue.standard().type("drop-6-foam"),
                133,
                new FarEnd.Open(),
                known.events().get(0),
                known.events().get(1),
                new CorrodedJoint("new", 80, 8, OptionalDouble.empty()),
                known.events().get(2));
        List<Bump> unexplained = attribution(known, trace(real, settings, 7)).bumps().stream()
                .filter(bump -> !bump.isExplained())
                .toList();
        assertTrue(!unexplained.isEmpty());
        assertTrue(
                unexplained.stream().allMatch(bump -> bump.shownMetres() > 79 && bump.shownMetres() < 86),
                unexplained.toString());
        assertEquals(80, unexplained.get(0).shownMetres(), 2);
        assertEquals(
                unexplained.get(0).standsOutVolts(),
                unexplained.get(0).unexplainedVolts(),
                0.2 * unexplained.get(0).standsOutVolts());
    }

    /** A low splice 190 ns before a break: what the splice shows must not be laid to the tall echo that comes after it. */
    @Test
    void smallBumpBesideATallEchoIsOfItsOwnHeight() {
        Cable cable = cable(
                Catalogue.standard().type("drop-6-foam"),
                120,
                FarEnd.Terminated.byOhms(75),
                new Splice("s", 48, 5e-9, 0, 0),
                new BrokenConductor("break", 73.5, OptionalDouble.empty()));
        Settings settings = new Settings(new HalfSine(10e-9), 0.85, 150, 0, 16);
        int splices = 0;
        for (long seed = 100; seed < 140; seed++) {
            for (Bump bump : attribution(cable, trace(cable, settings, seed)).bumps()) {
                boolean splice = Math.abs(bump.shownMetres() - 49) < 2;
                if (splice) {
                    assertTrue(Math.abs(bump.standsOutVolts()) < 0.02, seed + ": " + bump);
                    assertEquals(
                            Reflector.event("s"),
                            bump.shares().get(0).path().turns().get(0).at(),
                            seed + ": " + bump);
                    splices++;
                }
            }
        }
        assertTrue(splices >= 38, "the splice shows a bump of its own on " + splices + " of 40 traces");
    }

    @Test
    void bumpThatIsCutOffByTheReceiverIsStillExplained() {
        Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 26, 64);
        Attribution attribution = attribution(dropCable(), trace(dropCable(), settings, 3));
        Bump end = attribution.bumps().get(attribution.bumps().size() - 1);
        assertEquals(
                new Reflector.EndOfLine(),
                end.shares().get(0).path().turns().get(0).at());
        assertTrue(end.isExplained(), end.toString());
        assertTrue(Math.abs(end.volts()) < 0.1, end.toString());
    }

    @Test
    void traceOfOtherSettingsIsRefused() {
        Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 0, 64);
        Trace other = trace(dropCable(), settings.withRangeMetres(100), 1);
        PathSearch search = new PathSearch(dropCable(), USUAL, settings, 400, () -> false);
        assertThrows(IllegalArgumentException.class, () -> search.attribution(Optional.of(other)));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Interference;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AttributionTest {

    private static final Reflector END = new Reflector.EndOfLine();

    private static Instrument quiet(double ohms) {
        return new Instrument(ohms, 1e10, 1, 0, 1e-9, 0, 24, 1.25, 4096, 0, Interference.none());
    }

    private static List<Reflector> met(WavePath path) {
        return path.turns().stream().map(Turn::at).toList();
    }

    private static WavePath path(Attribution attribution, Reflector... turns) {
        return attribution.paths().stream()
                .filter(path -> met(path).equals(List.of(turns)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no path " + List.of(turns) + " among " + attribution.paths()));
    }

    /** Sections 75–60–75: −0.111111111, +0.109739369, +0.00135480702 (recomputed from the lattice). */
    @Test
    void mismatchedSectionIsItsLattice() {
        Cable line = new Cable(
                "Three lengths",
                List.of(new Run(lossless(75, 2e8), 20), new Run(lossless(60, 2e8), 10), new Run(lossless(75, 2e8), 20)),
                List.of(),
                FarEnd.Terminated.byOhms(75));
        Attribution attribution =
                Attribution.of(line, quiet(75), new Settings(new GaussianPulse(4e-9), 0.667, 60, 0, 1), LineEnd.NEAR);
        Reflector change = new Reflector.CableChange();
        assertEquals(-0.111111111, path(attribution, change).peakVolts(), 3e-4);
        WavePath ghost = path(attribution, change, change, change);
        assertEquals(0.00135480702, ghost.peakVolts(), 1e-5);
        assertEquals(2 * 40 / 2e8, ghost.arrivalSeconds(), 1e-12);
        assertTrue(attribution.worstErrorVolts() < 3e-5, "error " + attribution.worstErrorVolts());
        assertEquals(1, attribution.explainedEnergyShare(), 1e-6);
    }

    /** Sadiku, Elements of Electromagnetics, Ex. 11.8 (from memory): Γg = 1/3, ΓL = 3/5 on a line of 50 Ω. */
    @Test
    void mismatchedSourceAndLoadBounceAsSadikusExample() {
        Cable line = cable(lossless(50, 2e8), 20, FarEnd.Terminated.byOhms(200));
        Attribution attribution =
                Attribution.of(line, quiet(100), new Settings(new GaussianPulse(4e-9), 0.667, 120, 0, 1), LineEnd.NEAR);
        double launch = 1 - 1.0 / 9;
        assertEquals(launch * 0.6, path(attribution, END).peakVolts(), 1e-3);
        assertEquals(
                launch * 0.6 * 0.6 / 3,
                path(attribution, END, new Reflector.Port(), END).peakVolts(),
                1e-3);
        assertTrue(attribution.worstErrorVolts() < 1e-4, "error " + attribution.worstErrorVolts());
    }

    @Test
    void ghostOfTwoJointsIsNamedWithItsPath() {
        Cable line = cable(
                lossless(75, 2e8),
                100,
                FarEnd.Terminated.byOhms(75),
                new CorrodedJoint("a", 20, 60, OptionalDouble.empty()),
                new CorrodedJoint("b", 50, 60, OptionalDouble.empty()));
        Attribution attribution =
                Attribution.of(line, quiet(75), new Settings(new HalfSine(5e-9), 0.667, 120, 0, 1), LineEnd.NEAR);
        WavePath ghost = attribution.ghosts(1e-3).get(0);
        assertEquals(List.of(Reflector.event("b"), Reflector.event("a"), Reflector.event("b")), met(ghost));
        assertEquals(80, ghost.shownMetres(), 0.05);
        double rho = 60.0 / 210;
        double passed = 1 - rho;
        assertEquals(rho * rho * rho * passed * passed, ghost.peakVolts(), 1e-3);
        Bump bump = attribution.bumps().stream()
                .filter(one -> Math.abs(one.shownMetres() - 80.4) < 1)
                .findFirst()
                .orElseThrow();
        assertEquals(ghost, bump.shares().get(0).path());
    }

    @Test
    void pathsOfALessonCableExplainAlmostAllOfIt() {
        Cable line = cable(
                Catalogue.standard().type("drop-6-foam"),
                133,
                new FarEnd.Open(),
                new Splice("s", 31, 5e-9, 0, 0.01),
                new Tap("t", 58, 75, 0.8, 1.5e-12, 1e6),
                new Pinch("p", 84, 0.15, 0.5, Profile.RAISED_COSINE),
                new WaterIngress("w", 101, 5, 102, WaterDistribution.MAXWELL_GARNETT, 0.06, new Water(12, 0.02), 0));
        for (LineEnd end : LineEnd.values()) {
            Attribution attribution =
                    Attribution.of(line, Instrument.usual(75), new Settings(new HalfSine(5e-9), 0.85, 150, 0, 64), end);
            assertTrue(attribution.explainedEnergyShare() > 0.999, "explained " + attribution.explainedEnergyShare());
            assertTrue(attribution.bumps().size() >= 4, attribution.bumps().toString());
            for (Bump bump : attribution.bumps()) {
                double sum =
                        bump.shares().stream().mapToDouble(Bump.Share::volts).sum();
                assertEquals(bump.standsOutVolts(), sum, 0.2 * Math.abs(bump.standsOutVolts()), bump.toString());
                assertTrue(bump.isExplained(), bump.toString());
            }
        }
    }

    @Test
    void telephonePairWithABridgedTapIsExplainedToo() {
        Cable branch = cable(Catalogue.standard().type("pair-24"), 40, new FarEnd.Open());
        Cable line = cable(
                Catalogue.standard().type("pair-24"),
                400,
                new FarEnd.Open(),
                new BridgedTap("b", 150, branch),
                new TouchingConductors("leak", 280, OptionalDouble.of(400)));
        Attribution attribution = Attribution.of(
                line, Instrument.usual(100), new Settings(new HalfSine(100e-9), 0.66, 500, 0, 64), LineEnd.NEAR);
        assertTrue(attribution.explainedEnergyShare() > 0.99, "explained " + attribution.explainedEnergyShare());
        assertTrue(path(attribution, Reflector.event("b")).peakVolts() < -0.1);
        assertTrue(path(attribution, END).peakVolts() > 0);
    }

    @Test
    void nothingComesFromBehindAFullShort() {
        Cable line = cable(
                lossless(75, 2e8),
                100,
                new FarEnd.Open(),
                new TouchingConductors("short", 40, OptionalDouble.empty()),
                new Splice("s", 70, 1e-8, 0, 0));
        Attribution attribution =
                Attribution.of(line, quiet(75), new Settings(new HalfSine(5e-9), 0.667, 120, 0, 1), LineEnd.NEAR);
        assertTrue(attribution.paths().stream().noneMatch(path -> met(path).contains(Reflector.event("s"))));
        assertEquals(-1, path(attribution, Reflector.event("short")).peakVolts(), 2e-3);
    }
}

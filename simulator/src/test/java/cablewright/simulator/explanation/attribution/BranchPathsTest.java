// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Interference;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Paths through branches, on lossless lines where each is a product of numbers: at a joint of three equal lines −1/3 comes
 * back and 2/3 goes on each way (Kirchhoff's laws; as in Starr, Cioffi, Silverman, Understanding Digital Subscriber Line
 * Technology, ch. 3, from memory). Sizes are those of pulses that meet no other.
 */
class BranchPathsTest {

    private static final Instrument QUIET =
            new Instrument(100, 1e11, 1, 0, 1e-9, 0, 24, 1.25, 8192, 0, Interference.none());
    private static final Settings SETTINGS = new Settings(new GaussianPulse(2e-9), 0.667, 90, 0, 1);
    private static final double FIT = 1e-4;

    private static Turn onLine(Reflector at) {
        return new Turn(at, List.of(), List.of());
    }

    private static Turn inBranch(Reflector at, String... ids) {
        return new Turn(at, List.of(ids), List.of(ids));
    }

    private static WavePath path(Attribution attribution, Turn... turns) {
        return attribution.paths().stream()
                .filter(path -> path.turns().equals(List.of(turns)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no path " + List.of(turns) + " among " + attribution.paths()));
    }

    private static Cable tapped(Cable branch) {
        return cable(lossless(100, 2e8), 60, new FarEnd.Open(), new BridgedTap("b", 20, branch));
    }

    @Test
    void echoesOfABranchAreToldApart() {
        Cable line = tapped(cable(lossless(100, 2e8), 7, new FarEnd.Open()));
        Attribution attribution = Attribution.of(line, QUIET, SETTINGS, LineEnd.NEAR);
        Turn end = inBranch(new Reflector.EndOfBranch("b"), "b");
        Turn jointFromInside = new Turn(Reflector.event("b"), List.of(), List.of("b"));
        assertEquals(-1.0 / 3, path(attribution, onLine(Reflector.event("b"))).peakVolts(), FIT);
        WavePath first = path(attribution, end);
        assertEquals(4.0 / 9, first.peakVolts(), FIT);
        assertEquals(2 * 27 / 2e8, first.arrivalSeconds(), 1e-15);
        assertTrue(first.isThroughBranch());
        assertTrue(!first.isGhost());
        WavePath second = path(attribution, end, jointFromInside, end);
        assertEquals(-4.0 / 27, second.peakVolts(), FIT);
        assertEquals(2 * 34 / 2e8, second.arrivalSeconds(), 1e-15);
        assertEquals(
                4.0 / 9, path(attribution, onLine(new Reflector.EndOfLine())).peakVolts(), FIT);
        // Along the line, its end, into the branch, its end, home, and the same backward: 2 · 2/3 · 1 · 2/3 · 1 · 2/3.
        WavePath behind = attribution.paths().stream()
                .filter(path -> path.turns().size() == 2
                        && path.turns().containsAll(List.of(onLine(new Reflector.EndOfLine()), end)))
                .findFirst()
                .orElseThrow();
        assertEquals(2, behind.orders());
        assertEquals(16.0 / 27, behind.peakVolts(), FIT);
        assertEquals(2 * 67 / 2e8, behind.arrivalSeconds(), 1e-15);
        assertTrue(attribution.worstErrorVolts() < 1e-5, "error " + attribution.worstErrorVolts());
        assertTrue(attribution.explainedEnergyShare() > 1 - 1e-9, "share " + attribution.explainedEnergyShare());
    }

    @Test
    void branchInABranchIsFollowedToItsEnd() {
        Cable twig = cable(lossless(100, 2e8), 3, new FarEnd.Short());
        Cable branch = cable(lossless(100, 2e8), 7, new FarEnd.Open(), new BridgedTap("t", 4.5, twig));
        Attribution attribution = new PathSearch(tapped(branch), QUIET, SETTINGS.withRangeMetres(45), 3000, () -> false)
                .attribution(Optional.empty());
        double through = 4.0 / 9;
        assertEquals(
                through * -1 / 3,
                path(attribution, inBranch(Reflector.event("t"), "b")).peakVolts(),
                FIT);
        assertEquals(
                through * through,
                path(attribution, inBranch(new Reflector.EndOfBranch("b"), "b")).peakVolts(),
                FIT);
        WavePath deep = path(attribution, inBranch(new Reflector.EndOfBranch("t"), "b", "t"));
        assertEquals(-through * through, deep.peakVolts(), FIT);
        assertEquals(2 * (20 + 4.5 + 3) / 2e8, deep.arrivalSeconds(), 1e-15);
        PathLeg last = deep.way().get(2);
        assertEquals(List.of("b", "t"), last.branchIds());
        assertEquals(3, last.toMetres(), 1e-12);
        assertTrue(attribution.worstErrorVolts() < 1e-9, "error " + attribution.worstErrorVolts());
        assertEquals(1, attribution.explainedEnergyShare(), 1e-15);
    }

    @Test
    void lossAndDispersionGoWithThePath() {
        Cable branch = cable(Catalogue.standard().type("pair-24"), 60, new FarEnd.Open());
        Cable line =
                cable(Catalogue.standard().type("pair-24"), 400, new FarEnd.Open(), new BridgedTap("b", 150, branch));
        Attribution attribution = Attribution.of(
                line, Instrument.usual(100), new Settings(new HalfSine(100e-9), 0.66, 500, 0, 64), LineEnd.NEAR);
        double first =
                path(attribution, inBranch(new Reflector.EndOfBranch("b"), "b")).peakVolts();
        assertTrue(first > 0.1 && first < 4.0 / 9, "first " + first);
        assertTrue(attribution.explainedEnergyShare() > 0.999, "share " + attribution.explainedEnergyShare());
    }

    @Test
    void legOfASplitterIsABranchToo() {
        Cable leg = cable(lossless(75, 2e8), 15, new FarEnd.Short());
        Cable line = cable(
                lossless(75, 2e8), 60, FarEnd.Terminated.byOhms(75), new Splitter("d", 20, 75, 4, 3.5, 0, leg, false));
        Instrument instrument = new Instrument(75, 1e11, 1, 0, 1e-9, 0, 24, 1.25, 8192, 0, Interference.none());
        Attribution attribution = Attribution.of(line, instrument, SETTINGS, LineEnd.NEAR);
        double there = Math.pow(10, -2 * 3.5 / 20);
        assertEquals(
                -there,
                path(attribution, inBranch(new Reflector.EndOfBranch("d"), "d")).peakVolts(),
                FIT);
        assertEquals(1, attribution.paths().size());
        assertEquals(0, attribution.worstErrorVolts(), 1e-9);
    }
}

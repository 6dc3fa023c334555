// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.Water;
import cablewright.simulator.solve.ReflectionSolver;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/**
 * The sum over all ways of a wave is the reflection coefficient: waves are sent through the tree, bounce after bounce, and
 * what comes out at the port is added up until nothing is left. Held against the recursion from the load, which knows
 * nothing of scatterers.
 */
class ScatteringTreeTest {

    private static final ContourGrid GRID = ContourGrid.forRecord(1.5e-6, 2e-9);
    private static final Frequencies POINTS = GRID.points();
    private static final ProfileSteps STEPS = ProfileSteps.forEdge(5e-9);

    private static void assertWaysAddUp(Cable cable, double sourceOhms, double error) {
        ScatteringTree tree = ScatteringTree.of(cable, sourceOhms, STEPS, POINTS);
        ComplexArray expected = ReflectionSolver.reflection(CableCompiler.compile(cable, STEPS), sourceOhms, POINTS);
        for (int k = 0; k < POINTS.count(); k += 37) {
            Complex sum = allWays(tree, k);
            Complex gamma = new Complex(expected.re(k), expected.im(k));
            assertEquals(0, sum.subtract(gamma).abs(), error, cable.title() + " at " + k);
        }
    }

    private static Complex at(ComplexArray values, int k) {
        return new Complex(values.re(k), values.im(k));
    }

    /** Bounces until less than 1e-14 is under way. */
    private static Complex allWays(ScatteringTree tree, int k) {
        int count = tree.legs().size();
        Complex[] out = new Complex[count];
        Complex[] back = new Complex[count];
        Arrays.fill(out, Complex.ZERO);
        Arrays.fill(back, Complex.ZERO);
        Complex sum = at(tree.scatterers().get(0).wave(0, 0), k);
        spread(tree, 0, 0, Complex.ONE, out, back, k);
        double left = 1;
        while (left > 1e-14) {
            Complex[] going = out;
            Complex[] coming = back;
            out = new Complex[count];
            back = new Complex[count];
            Arrays.fill(out, Complex.ZERO);
            Arrays.fill(back, Complex.ZERO);
            for (int i = 0; i < count; i++) {
                LineLeg leg = tree.legs().get(i);
                Complex decay = at(leg.decay(), k);
                spread(tree, leg.far(), 0, going[i].multiply(decay), out, back, k);
                sum = sum.add(spread(tree, leg.near(), leg.nearPort(), coming[i].multiply(decay), out, back, k));
            }
            left = 0;
            for (int i = 0; i < count; i++) {
                left += out[i].abs() + back[i].abs();
            }
        }
        return sum;
    }

    /** Splits a wave that arrives at a scatterer. @return what leaves the port */
    private static Complex spread(
            ScatteringTree tree, int node, int port, Complex wave, Complex[] out, Complex[] back, int k) {
        Scatterer scatterer = tree.scatterers().get(node);
        for (int i = 1; i < scatterer.ports(); i++) {
            int leg = tree.legFrom(node, i).far() - 1;
            out[leg] = out[leg].add(wave.multiply(at(scatterer.wave(i, port), k)));
        }
        Complex leaves = wave.multiply(at(scatterer.wave(0, port), k));
        if (node > 0) {
            back[node - 1] = back[node - 1].add(leaves);
            return Complex.ZERO;
        }
        return port == 0 ? Complex.ZERO : leaves;
    }

    @Test
    void waysOfADropCableAddUpToItsReflection() {
        assertWaysAddUp(
                cable(
                        Catalogue.standard().type("drop-6-foam"),
                        133,
                        new FarEnd.Open(),
                        new Splice("s", 31, 5e-9, 1e-12, 0.01),
                        new Connector("c", 31, 50, 0.04, 0.2),
                        new Tap("t", 58, 75, 0.8, 1.5e-12, 1e6),
                        new Pinch("p", 84, 0.15, 0.5, Profile.RAISED_COSINE),
                        new WaterIngress(
                                "w", 101, 5, 102, WaterDistribution.MAXWELL_GARNETT, 0.06, new Water(12, 0.02), 0)),
                75,
                1e-11);
    }

    @Test
    void waysThroughBranchesOfBranchesAddUpToo() {
        Cable twig = cable(lossless(120, 2e8), 7, new FarEnd.Short());
        Cable branch = cable(
                lossless(100, 2e8),
                30,
                new FarEnd.Open(),
                new BridgedTap("b", 12, twig),
                new CorrodedJoint("j", 20, 40, OptionalDouble.empty()));
        Cable atItsMouth = cable(lossless(80, 2e8), 9, new FarEnd.Open(), new BridgedTap("b", 0, twig));
        Cable line = cable(
                lossless(100, 2e8),
                80,
                FarEnd.Terminated.byOhms(130),
                new BridgedTap("a", 25, branch),
                new Splice("s", 25, 1e-8, 0, 0.1),
                new BridgedTap("c", 50, atItsMouth),
                new BridgedTap("d", 80, twig));
        assertWaysAddUp(line, 75, 1e-11);
        assertWaysAddUp(line.seenFromFarEnd(), 75, 1e-11);
    }

    @Test
    void waysBesideWallsAndDividersAddUp() {
        Cable leg = cable(Catalogue.standard().type("drop-6-foam"), 20, new FarEnd.Open());
        Cable broken =
                cable(lossless(75, 2e8), 10, new FarEnd.Open(), new BrokenConductor("x", 0, OptionalDouble.empty()));
        Cable line = new Cable(
                "Walls",
                List.of(
                        new Run(Catalogue.standard().type("drop-6-foam"), 60),
                        new Run(Catalogue.standard().type("pair-24"), 40)),
                List.of(
                        new Splitter("d", 20, 75, 3.5, 3.5, 1e-12, leg, false),
                        new BridgedTap("b", 35, broken),
                        new TouchingConductors("short", 80, OptionalDouble.empty()),
                        new BrokenConductor("open", 80, OptionalDouble.empty())),
                new FarEnd.Open(),
                Cable.BASE_CELSIUS,
                Optional.of(new TestLead(lossless(50, 2e8), 3)));
        assertWaysAddUp(line, 75, 1e-11);
        assertWaysAddUp(line.seenFromFarEnd(), 75, 1e-11);
    }

    @Test
    void waysBesideSplitStretchesAddUp() {
        SplitShape shape = new SplitShape(SplitLayout.TWISTED, OptionalDouble.of(1.6));
        for (boolean putRight : new boolean[] {true, false}) {
            Cable line = cable(
                    Catalogue.standard().type("pair-24"),
                    120,
                    FarEnd.Terminated.byOhms(100),
                    new CorrodedJoint("j", 15, 30, OptionalDouble.empty()),
                    new Split("s", 40, putRight ? 35 : 80, shape, putRight, NeighbourEnd.MATCHED, NeighbourEnd.OPEN),
                    new CorrodedJoint("in", 60, 30, OptionalDouble.empty()));
            assertWaysAddUp(line, 100, 1e-11);
            assertWaysAddUp(line.seenFromFarEnd(), 100, 1e-11);
        }
    }

    @Test
    void everyPlaceIsOnItsOwnCablesMeasure() {
        Cable twig = cable(lossless(120, 2e8), 7, new FarEnd.Short());
        Cable branch = cable(lossless(100, 2e8), 30, new FarEnd.Open(), new BridgedTap("b", 12, twig));
        Cable line = cable(lossless(100, 2e8), 80, new FarEnd.Open(), new BridgedTap("a", 25, branch));
        ScatteringTree tree = ScatteringTree.of(line, 100, STEPS, POINTS);
        Scatterer joint = tree.scatterers().get(1);
        assertEquals(3, joint.ports());
        assertEquals(25, joint.startMetres(), 1e-9);
        LineLeg into = tree.legFrom(1, 2);
        assertEquals(List.of("a"), into.branchIds());
        assertEquals(0, into.startMetres(), 1e-9);
        assertEquals(12, into.endMetres(), 1e-9);
        assertEquals(12 / 2e8, into.seconds(), 1e-18);
        LineLeg deeper = tree.legFrom(into.far(), 2);
        assertEquals(List.of("a", "b"), deeper.branchIds());
        Scatterer last = tree.scatterers().get(deeper.far());
        assertEquals(Scatterer.Role.END, last.role());
        assertEquals(7, last.startMetres(), 1e-9);
        assertTrue(tree.legTo(0).isEmpty());
    }

    /** Three equal lines joined: −1/3 back, 2/3 on, from every side (Kirchhoff's laws). */
    @Test
    void jointOfThreeEqualLinesSendsBackAThird() {
        Cable branch = cable(lossless(100, 2e8), 30, new FarEnd.Open());
        Cable line = cable(lossless(100, 2e8), 80, new FarEnd.Open(), new BridgedTap("a", 25, branch));
        Scatterer joint =
                ScatteringTree.of(line, 100, STEPS, POINTS).scatterers().get(1);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertEquals(i == j ? -1.0 / 3 : 2.0 / 3, joint.wave(i, j).re(5), 1e-12);
            }
        }
    }
}

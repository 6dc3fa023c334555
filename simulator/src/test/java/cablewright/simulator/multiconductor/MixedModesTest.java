// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.crosssection.surface.RoundWire;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.multiconductor.CoupledElement.Between;
import cablewright.simulator.multiconductor.CoupledElement.InConductor;
import cablewright.simulator.multiconductor.CoupledElement.Joint;
import cablewright.simulator.multiconductor.CoupledElement.Length;
import cablewright.simulator.port.SimulatedPort;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines whose losses mix the modes, and faults of one wire. */
class MixedModesTest {

    private static final double[] SWEEP = {1e4, 1e6, 1e7, 4.7e7, 2.2e8, 1e9};
    private static final Frequencies FREQUENCIES = Frequencies.ofSweep(SWEEP);

    /** Paul's ribbon (Analysis of Multiconductor Transmission Lines, 2nd ed., ch. 9): L and C do not commute. */
    private static final double[][] L = {{0.7485e-6, 0.5077e-6}, {0.5077e-6, 1.0154e-6}};

    private static final double[][] C = {{37.432e-12, -18.716e-12}, {-18.716e-12, 24.982e-12}};

    private static final SurfaceImpedance WIRE = new RoundWire(0.19e-3, Conductor.COPPER);

    private static CoupledNetwork two(CoupledLine line, double metres, double ohms) {
        List<Tie> ends = List.of(new Tie(0, Tie.REFERENCE, ohms), new Tie(1, Tie.REFERENCE, ohms));
        return new CoupledNetwork(List.of(new Length(line, metres)), ends, ends);
    }

    private static ConductorLosses losses(SurfaceImpedance one, SurfaceImpedance other) {
        return new ConductorLosses(
                List.of(one, other), Optional.of(WIRE), Optional.of(new ConstantLossTangent(2.3, 0.02, 1e8)));
    }

    private static void assertSame(ComplexArray expected, ComplexArray found, double allowed) {
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(expected.re(k), found.re(k), allowed, "at " + SWEEP[k]);
            assertEquals(expected.im(k), found.im(k), allowed, "at " + SWEEP[k]);
        }
    }

    private static void assertSame(CoupledNetwork expected, CoupledNetwork found, double allowed) {
        CoupledSolver.Voltages one = CoupledSolver.solve(expected, 0, FREQUENCIES);
        CoupledSolver.Voltages other = CoupledSolver.solve(found, 0, FREQUENCIES);
        for (int i = 0; i < expected.nearEnds().size(); i++) {
            assertSame(one.near().get(i), other.near().get(i), allowed);
            assertSame(one.far().get(i), other.far().get(i), allowed);
        }
    }

    /** Next to no loss: the lossless solution in its own modes; Paul's ribbon, of 2 m and of 200. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 200})
    void withoutLossItIsTheLosslessLine(double metres) {
        SurfaceImpedance nothing = new RoundWire(1, new Conductor("perfect", 1e30, 1, 0));
        CoupledLine bare = CoupledLine.lossy(
                L, C, new ConductorLosses(List.of(nothing, nothing), Optional.empty(), Optional.empty()));
        assertSame(two(CoupledLine.lossless(L, C), metres, 50), two(bare, metres, 50), 1e-9);
    }

    /** Like conductors in one dielectric have the same modes at all frequencies: two solutions of one line. */
    @Test
    void whereModesDoNotMixBothSolutionsAgree() {
        PairSection pair = (PairSection) Catalogue.standard().type("cat-5e").section();
        double[][] l =
                CoupledLine.of(WireLayout.ringOfPairs(pair, 2, 2e-3, 1), pair).inductanceHenriesPerMetre();
        // The pair without its losses but with those of its wires, told per conductor.
        CoupledLine lossless = CoupledLine.inOneDielectric(l, pair.velocityFraction());
        ConductorLosses wires = new ConductorLosses(Collections.nCopies(4, WIRE), Optional.empty(), Optional.empty());
        CoupledLine told = CoupledLine.lossy(l, lossless.capacitanceFaradsPerMetre(), wires);
        CoupledNetwork byWires = CoupledNetwork.ofPairs(List.of(new Length(told, 30)), 100);
        // The same as one pair by itself, z = sL + 2r, y = sC.
        CoupledSolver.Voltages found = CoupledSolver.solve(byWires, 0, FREQUENCIES);
        double slow = 1 / (pair.velocityFraction() * 299_792_458.0);
        double[] re = new double[1];
        double[] im = new double[1];
        for (int k = 0; k < SWEEP.length; k++) {
            double w = 2 * Math.PI * SWEEP[k];
            WIRE.evaluate(new double[1], new double[] {w}, re, im);
            Complex z = new Complex(2 * re[0], w * pair.impedanceOhms() * slow + 2 * im[0]);
            Complex y = new Complex(0, w * slow / pair.impedanceOhms());
            Complex gamma = z.multiply(y).sqrt();
            Complex zc = z.divide(y).sqrt();
            Complex load = new Complex(100);
            Complex back = load.subtract(zc)
                    .divide(load.add(zc))
                    .multiply(gamma.multiply(-60).exp());
            Complex in = zc.multiply(back.add(1)).divide(Complex.ONE.subtract(back));
            Complex expected = in.subtract(100).divide(in.add(100)).add(1);
            assertEquals(expected.getReal(), found.near().get(0).re(k), 1e-5);
            assertEquals(expected.getImaginary(), found.near().get(0).im(k), 1e-5);
            assertEquals(0, found.near().get(1).magnitude(k), 1e-5);
        }
    }

    /** Cutting a lossy line in two, driving it from the other conductor, and passive ends: laws of any linear line. */
    @Test
    void lossyRibbonKeepsTheLaws() {
        CoupledLine line = CoupledLine.lossy(L, C, losses(WIRE, new RoundWire(0.1e-3, Conductor.COPPER)));
        List<Tie> ends = two(line, 1, 50).nearEnds();
        CoupledNetwork cut = new CoupledNetwork(List.of(new Length(line, 0.7), new Length(line, 1.3)), ends, ends);
        assertSame(two(line, 2, 50), cut, 1e-10);
        CoupledSolver.Voltages one = CoupledSolver.solve(two(line, 2, 50), 0, FREQUENCIES);
        CoupledSolver.Voltages other = CoupledSolver.solve(two(line, 2, 50), 1, FREQUENCIES);
        assertSame(one.near().get(1), other.near().get(0), 1e-10);
        assertSame(one.far().get(1), other.far().get(0), 1e-10);
        for (int k = 0; k < SWEEP.length; k++) {
            double back =
                    Math.hypot(one.near().get(0).re(k) - 1, one.near().get(0).im(k));
            double sum = back * back
                    + Math.pow(one.near().get(1).magnitude(k), 2)
                    + Math.pow(one.far().get(0).magnitude(k), 2)
                    + Math.pow(one.far().get(1).magnitude(k), 2);
            assertTrue(sum < 1, "at " + SWEEP[k] + " ends take " + sum);
        }
    }

    /** At rest the wires' resistances divide the source: 50 and R1 + R0 and R2 in a ladder of resistors, by nodes. */
    @Test
    void atRestItIsANetworkOfResistors() {
        SurfaceImpedance thin = new RoundWire(20e-6, Conductor.COPPER);
        ConductorLosses wires = new ConductorLosses(List.of(thin, thin), Optional.of(thin), Optional.empty());
        CoupledLine line = CoupledLine.lossy(L, C, wires);
        double r = 10 * thin.dcResistanceOhmsPerMetre();
        CoupledSolver.Voltages at = CoupledSolver.solve(two(line, 10, 50), 0, Frequencies.ofSweep(1));
        // Loop currents i1, i2 through own wire and the common one: 2 V behind 50 ohm drives the first.
        double a = 100 + 2 * r;
        double i1 = 2 * a / (a * a - r * r);
        double i2 = -r / a * i1;
        assertEquals(2 - 50 * i1, at.near().get(0).re(0), 1e-6);
        assertEquals(-50 * i2, at.near().get(1).re(0), 1e-6);
        assertEquals(50 * i1, at.far().get(0).re(0), 1e-6);
    }

    /** A thousand metres of thin wire: nothing overflows, and the far end takes nothing. */
    @Test
    void muchLossDoesNotOverflow() {
        SurfaceImpedance thin = new RoundWire(10e-6, Conductor.COPPER);
        CoupledLine line = CoupledLine.lossy(L, C, losses(thin, WIRE));
        CoupledSolver.Voltages at = CoupledSolver.solve(two(line, 1000, 50), 0, FREQUENCIES);
        assertTrue(at.far().get(0).magnitude(5) < 1e-12);
        assertTrue(Double.isFinite(at.near().get(1).magnitude(5)));
    }

    private static final CoupledLine LOSSLESS = CoupledLine.lossless(L, C);

    private static CoupledNetwork with(CoupledElement... elements) {
        List<Tie> ends = List.of(new Tie(0, Tie.REFERENCE, 50), new Tie(1, Tie.REFERENCE, 50));
        return new CoupledNetwork(List.of(elements), ends, ends);
    }

    /** A break is a capacitance of nothing, a joint of nothing is none; contacts alike. */
    @Test
    void faultsOfOneWireHaveTheirLimits() {
        Length half = new Length(LOSSLESS, 1);
        CoupledNetwork plain = with(half, half);
        CoupledNetwork joint = with(half, new InConductor(0, 2, Optional.of(Lumped.resistor(1e-9))), half);
        assertSame(plain, joint, 1e-9);
        CoupledNetwork open = with(half, new InConductor(0, 2, Optional.empty()), half);
        assertSame(open, with(half, new InConductor(0, 2, Optional.of(Lumped.resistor(1e12))), half), 1e-8);
        assertSame(plain, with(half, new Between(0, 1, 2, Lumped.resistor(1e12)), half), 1e-9);
        // Two wires that touch at the very end carry the same voltage.
        CoupledSolver.Voltages touching =
                CoupledSolver.solve(with(half, new Between(0, 1, 2, Lumped.resistor(1e-6))), 0, FREQUENCIES);
        assertSame(touching.far().get(0), touching.far().get(1), 1e-7);
        // What is shorted to the reference at the end arrives nowhere.
        CoupledSolver.Voltages grounded = CoupledSolver.solve(
                with(half, new Between(0, Tie.REFERENCE, 2, Lumped.resistor(1e-6))), 0, FREQUENCIES);
        assertTrue(grounded.far().get(0).magnitude(3) < 1e-6);
    }

    /** Without loss, what a broken wire does not let pass comes back or goes to the neighbour. */
    @Test
    void powerThatMeetsABrokenWireComesToSomeEnd() {
        Length half = new Length(LOSSLESS, 1);
        CoupledSolver.Voltages at =
                CoupledSolver.solve(with(half, new InConductor(0, 2, Optional.empty()), half), 0, FREQUENCIES);
        for (int k = 0; k < SWEEP.length; k++) {
            double back =
                    Math.hypot(at.near().get(0).re(k) - 1, at.near().get(0).im(k));
            double sum = back * back
                    + Math.pow(at.near().get(1).magnitude(k), 2)
                    + Math.pow(at.far().get(0).magnitude(k), 2)
                    + Math.pow(at.far().get(1).magnitude(k), 2);
            assertEquals(1, sum, 1e-10);
        }
    }

    /** A joint within a split, half of it in each wire of the circuit, is what the split of a cable makes of it. */
    @Test
    void jointWithinASplitIsHalfInEachWire() {
        PairSection pair = (PairSection) Catalogue.standard().type("cat-5e").section();
        double h = 2 * pair.geometry().spacingMetres();
        CoupledLine line = CoupledLine.of(WireLayout.pairs(pair, new double[][] {{-h / 2, 0}, {h / 2, 0}}, 1), pair);
        Joint joint = Joint.splitting(2, 0, 1);
        // Near wires 0 and 1 go on as 0 and 3.
        Optional<Lumped> part = Optional.of(Lumped.resistor(20));
        CoupledNetwork wires = new CoupledNetwork(
                List.of(
                        new Length(line, 15),
                        joint,
                        new Length(line, 5),
                        new InConductor(0, 4, part),
                        new InConductor(3, 4, part),
                        new Length(line, 7),
                        joint,
                        new Length(line, 25)),
                List.of(new Tie(0, 1, 100), new Tie(3, 2, 1e12)),
                List.of(new Tie(0, 1, 60), new Tie(3, 2, 1e12)));
        SplitShape shape = new SplitShape(SplitLayout.TWISTED, OptionalDouble.of(2));
        Event split = new Split("s", 15, 12, shape, true, NeighbourEnd.OPEN, NeighbourEnd.OPEN);
        Event corroded = new CorrodedJoint("c", 20, 40, OptionalDouble.empty());
        Cable cable = TestCables.cable(
                Catalogue.standard().type("cat-5e"), 52, FarEnd.Terminated.byOhms(60), split, corroded);
        ComplexArray gamma = new SimulatedPort(cable, 100).sweep(SWEEP);
        ComplexArray across = CoupledSolver.solve(wires, 0, FREQUENCIES).near().get(0);
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(across.re(k) - 1, gamma.re(k), 2e-5);
            assertEquals(across.im(k), gamma.im(k), 2e-5);
        }
    }

    @Test
    void whatCanNotBeIsRefused() {
        ConductorLosses one = new ConductorLosses(List.of(WIRE), Optional.empty(), Optional.empty());
        assertThrows(IllegalArgumentException.class, () -> CoupledLine.lossy(L, C, one));
        assertThrows(IllegalArgumentException.class, () -> new InConductor(2, 2, Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new Between(0, 0, 2, Lumped.resistor(1)));
        assertThrows(IllegalArgumentException.class, () -> new Between(0, 1, 2, Lumped.resistor(0)));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.Waveform;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Against C. R. Paul, Analysis of Multiconductor Transmission Lines, 2nd ed. (2007): his ribbon and board of ch. 9, and the
 * closed forms of even and odd modes (physics reference, section on coupled pairs; exact values there by another solution of
 * the same lines).
 */
class CoupledLineTest {

    private static final int REFERENCE = Tie.REFERENCE;

    /** Two conductors over a reference, every end tied to it. */
    private static CoupledNetwork two(CoupledLine line, double metres, double ohms) {
        List<Tie> ends = List.of(new Tie(0, REFERENCE, ohms), new Tie(1, REFERENCE, ohms));
        return new CoupledNetwork(List.of(new CoupledElement.Length(line, metres)), ends, ends);
    }

    /** What a response gives to a linear edge from 0 to 1 V, by its transform (1 − e^(−sτ))/(s² τ). */
    private static Waveform toEdge(PortResponse response, double edgeSeconds, double recordSeconds) {
        ContourGrid grid = ContourGrid.forRecord(recordSeconds, edgeSeconds / 400);
        int count = grid.frequencies();
        ComplexArray h = response.reflection(grid, count);
        double[] re = new double[count];
        double[] im = new double[count];
        double c = grid.dampingPerSecond();
        for (int k = 0; k < count; k++) {
            double w = k * grid.spacingRadiansPerSecond();
            double size = Math.exp(-c * edgeSeconds);
            double nRe = 1 - size * Math.cos(w * edgeSeconds);
            double nIm = size * Math.sin(w * edgeSeconds);
            double dRe = edgeSeconds * (c * c - w * w);
            double dIm = edgeSeconds * 2 * c * w;
            double d = dRe * dRe + dIm * dIm;
            double fRe = (nRe * dRe + nIm * dIm) / d;
            double fIm = (nIm * dRe - nRe * dIm) / d;
            re[k] = h.re(k) * fRe - h.im(k) * fIm;
            im[k] = h.re(k) * fIm + h.im(k) * fRe;
        }
        return Inversion.invert(grid, ComplexArray.takingOver(re, im));
    }

    private static final CoupledLine LIKE_TWO = CoupledLine.lossless(
            new double[][] {{500e-9, 150e-9}, {150e-9, 500e-9}}, new double[][] {{60e-12, -12e-12}, {-12e-12, 60e-12}});

    /** Ze = √((L + Lm)/(C − Cm)), Zo = √((L − Lm)/(C + Cm)) and so on; printed figures. */
    @Test
    void likeConductorsHaveTheEvenAndOddModesOfTheClosedForms() {
        double[] v = LIKE_TWO.modeVelocitiesMetresPerSecond();
        Arrays.sort(v);
        assertEquals(1.79028719e8, v[0], 1);
        assertEquals(1.99204768e8, v[1], 1);
        // Between the two: twice the odd impedance. One against the reference, the other at no current: (Ze + Zo)/2.
        assertEquals(139.443338, LIKE_TWO.impedanceOhms(0, 1), 1e-6);
        assertEquals((116.368667 + 69.7216689) / 2, LIKE_TWO.impedanceOhms(0, REFERENCE), 1e-6);
    }

    /** Plateau (√Ze − √Zo)/(√Ze + √Zo) for there and back; at the far end −(l/2)(1/ve − 1/vo) dV/dt. */
    @Test
    void matchedEndsHearThePlateauAndTheDerivative() {
        double z0 = 90.0745118;
        double metres = 3;
        CoupledPort port = new CoupledPort(two(LIKE_TWO, metres, z0), 0);
        Waveform near = toEdge(port.nearEndCrosstalk(1), 1e-9, 60e-9);
        assertEquals(0.12736752, near.at(10e-9), 1e-4);
        assertEquals(0.12736752, near.at(25e-9), 1e-3);
        // Modes of unlike velocity do not end in Z0 all the way, so something is left.
        assertEquals(0, near.at(50e-9), 3e-3);
        Waveform far = toEdge(port.farEnd(1), 20e-9, 120e-9);
        // To first order: modes that are not matched take some of it.
        assertEquals(-metres * 2.82867929e-10 / 20e-9, far.at(20e-9), 1e-3);
        Waveform through = toEdge(port.farEnd(0), 1e-9, 60e-9);
        assertEquals(0, through.at(15e-9), 1e-4);
        assertEquals(1, through.at(55e-9), 1e-3);
    }

    /** A quarter of a wave long, near-end coupling at one frequency is (Ze − Zo)/(Ze + Zo): 0.2 for 120 and 80 ohms. */
    @Test
    void quarterWaveHearsTwiceAsMuchAsAStepAndTheFarEndNothing() {
        CoupledLine line = CoupledLine.inOneDielectric(
                new double[][] {{483.3803e-9, 96.676059e-9}, {96.676059e-9, 483.3803e-9}}, 1 / Math.sqrt(2.1));
        double[] v = line.modeVelocitiesMetresPerSecond();
        double metres = 2;
        CoupledPort port = new CoupledPort(two(line, metres, 97.97959), 0);
        CoupledSolver.Voltages at = port.voltages(Frequencies.ofSweep(v[0] / (4 * metres)));
        assertEquals(0.2, at.near().get(1).magnitude(0), 1e-6);
        assertEquals(0, at.far().get(1).magnitude(0), 1e-6);
        assertEquals(0, at.near().get(0).re(0) - 1, 1e-6);
        assertEquals(50.352114e-12, line.capacitanceFaradsPerMetre()[0][0], 1e-17);
        assertEquals(-10.070423e-12, line.capacitanceFaradsPerMetre()[0][1], 1e-17);
        assertEquals(0.10102051, toEdge(port.nearEndCrosstalk(1), 1e-9, 40e-9).at(10e-9), 1e-5);
    }

    private static final CoupledLine RIBBON = CoupledLine.lossless(
            new double[][] {{0.7485e-6, 0.5077e-6}, {0.5077e-6, 1.0154e-6}},
            new double[][] {{37.432e-12, -18.716e-12}, {-18.716e-12, 24.982e-12}});

    /**
     * All four loads 50 ohms, a source of 1 V on conductor 2; so half of it goes out. Published: "around 110 mV". Values at
     * the edge's own corners, 20 and 28.6 ns, are rounded a little by any solution with finitely many frequencies.
     */
    @Test
    void ribbonOfPaulHearsWhatHePrints() {
        double[] v = RIBBON.modeVelocitiesMetresPerSecond();
        Arrays.sort(v);
        assertEquals(2.32396443e8, v[0], 1e3);
        assertEquals(2.51064498e8, v[1], 1e3);
        CoupledPort port = new CoupledPort(two(RIBBON, 2, 50), 1);
        Waveform near = toEdge(port.nearEndCrosstalk(0), 20e-9, 150e-9);
        assertEquals(0.11296, highest(near, 1) / 2, 1e-4);
        assertEquals(0.11296, near.at(20.0e-9) / 2, 1e-4);
        assertEquals(0.10202, near.at(30e-9) / 2, 2e-5);
        assertEquals(0.05937, near.at(50e-9) / 2, 2e-5);
        assertEquals(0.00968, near.at(100e-9) / 2, 2e-5);
        Waveform far = toEdge(port.farEnd(0), 20e-9, 150e-9);
        assertEquals(-0.10904, -highest(far, -1) / 2, 1e-4);
        assertEquals(-0.10904, far.at(28.6e-9) / 2, 1e-4);
        // An edge of 1 ns reaches the plateau, and the far end hears its like.
        assertEquals(0.11917, highest(toEdge(port.nearEndCrosstalk(0), 1e-9, 100e-9), 1) / 2, 5e-5);
        assertEquals(0.11944, highest(toEdge(port.farEnd(0), 1e-9, 100e-9), -1) / 2, 5e-5);
    }

    @Test
    void boardOfPaulHearsWhatHePrints() {
        CoupledLine board = CoupledLine.lossless(
                new double[][] {{1.10515e-6, 0.690613e-6}, {0.690613e-6, 1.38123e-6}},
                new double[][] {{40.5985e-12, -20.2992e-12}, {-20.2992e-12, 29.7378e-12}});
        double[] v = board.modeVelocitiesMetresPerSecond();
        Arrays.sort(v);
        assertEquals(1.80045655e8, v[0], 1e3);
        assertEquals(1.92251376e8, v[1], 1e3);
        CoupledPort port = new CoupledPort(two(board, 0.254, 50), 1);
        Waveform near = toEdge(port.nearEndCrosstalk(0), 6.25e-9, 40e-9);
        assertEquals(0.09568, highest(near, 1) / 2, 3e-4);
        assertEquals(0.09568, near.at(6.25e-9) / 2, 3e-4);
        Waveform far = toEdge(port.farEnd(0), 6.25e-9, 40e-9);
        assertEquals(0.08886, highest(far, -1) / 2, 3e-4);
        assertEquals(-0.08886, far.at(7.67e-9) / 2, 3e-4);
    }

    private static double highest(Waveform wave, int sign) {
        double best = 0;
        for (int i = 0; i < wave.count(); i++) {
            best = Math.max(best, sign * wave.sample(i));
        }
        return best;
    }

    @Test
    void driverAndHearerMayChangePlaces() {
        double[] sweep = {1e5, 3e6, 4.7e7, 2.2e8, 1e9};
        CoupledNetwork network = two(RIBBON, 2, 50);
        ComplexArray one = new CoupledPort(network, 0)
                .voltages(Frequencies.ofSweep(sweep))
                .near()
                .get(1);
        ComplexArray other = new CoupledPort(network, 1)
                .voltages(Frequencies.ofSweep(sweep))
                .near()
                .get(0);
        for (int k = 0; k < sweep.length; k++) {
            assertEquals(one.re(k), other.re(k), 1e-12);
            assertEquals(one.im(k), other.im(k), 1e-12);
        }
    }

    /** Without loss, all that goes out comes to some end: |Γ|² and the shares at the other three ends make 1. */
    @Test
    void powerThatGoesOutComesToSomeEnd() {
        double[] sweep = {1e5, 3e6, 4.7e7, 2.2e8, 1e9};
        CoupledSolver.Voltages at = new CoupledPort(two(RIBBON, 2, 50), 1).voltages(Frequencies.ofSweep(sweep));
        for (int k = 0; k < sweep.length; k++) {
            double back =
                    Math.hypot(at.near().get(1).re(k) - 1, at.near().get(1).im(k));
            double sum = back * back
                    + Math.pow(at.near().get(0).magnitude(k), 2)
                    + Math.pow(at.far().get(0).magnitude(k), 2)
                    + Math.pow(at.far().get(1).magnitude(k), 2);
            assertEquals(1, sum, 1e-11);
        }
    }

    @Test
    void matricesThatNoLineCanHaveAreRefused() {
        double[][] l = {{1e-6, 2e-7}, {2e-7, 1e-6}};
        double[][] c = {{5e-11, -1e-11}, {-1e-11, 5e-11}};
        double[][] lopsided = {{1e-6, 2e-7}, {3e-7, 1e-6}};
        double[][] strange = {{1e-6, 2e-6}, {2e-6, 1e-6}};
        double[][] small = {{1e-6}};
        CoupledLine.lossless(l, c);
        for (double[][] wrong : List.of(lopsided, strange, small)) {
            String refusal = assertThrows(IllegalArgumentException.class, () -> CoupledLine.lossless(wrong, c))
                    .getMessage();
            assertTrue(refusal.contains("tance"), refusal);
        }
        assertThrows(IllegalArgumentException.class, () -> CoupledLine.inOneDielectric(l, 1.1));
        CoupledLine line = CoupledLine.lossless(l, c);
        assertThrows(IllegalArgumentException.class, () -> new CoupledElement.Length(line, 0));
        assertThrows(IllegalArgumentException.class, () -> new CoupledElement.Joint(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Tie(0, 0, 50));
        assertThrows(IllegalArgumentException.class, () -> new Tie(0, REFERENCE, 0));
        assertThrows(IllegalArgumentException.class, () -> new CoupledPort(two(line, 1, 50), 2));
        assertThrows(IllegalArgumentException.class, () -> new CoupledPort(two(line, 1, 50), 0).nearEndCrosstalk(0));
        assertThrows(IllegalArgumentException.class, () -> new CoupledPort(two(line, 1, 50), 0).farEnd(2));
        List<Tie> ties = List.of(new Tie(0, 5, 50));
        List<CoupledElement> one = List.of(new CoupledElement.Length(line, 1));
        assertThrows(IllegalArgumentException.class, () -> new CoupledNetwork(one, ties, ties));
        List<CoupledElement> unlike = List.of(new CoupledElement.Length(line, 1), new CoupledElement.Joint(1, 2, 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> new CoupledNetwork(unlike, List.of(new Tie(0, 1, 50)), List.of()));
    }
}

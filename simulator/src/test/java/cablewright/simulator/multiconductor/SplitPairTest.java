// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.multiconductor.CoupledElement.Joint;
import cablewright.simulator.multiconductor.CoupledElement.Length;
import cablewright.simulator.solve.ReflectionSolver;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Waveform;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Split and re-split pairs, made by joints that permute wires and nothing else. */
class SplitPairTest {

    private static final PairSection PAIR =
            (PairSection) Catalogue.standard().type("cat-5e").section();
    private static final double PITCH = 2.2e-3;
    private static final double SHEATH = WireLayout.FAR_METRES;
    private static final CoupledLine TWO_PAIRS = pairs(2, SHEATH);
    private static final CoupledLine FOUR_PAIRS = pairs(4, SHEATH);
    private static final double SECONDS_PER_METRE = 1 / (PAIR.velocityFraction() * 299_792_458.0);
    private static final Frequencies SWEEP = Frequencies.ofSweep(1e4, 1e6, 1e7, 3.3e7, 1e8, 3e8);

    private static CoupledLine pairs(int count, double shieldMetres) {
        return CoupledLine.of(WireLayout.ringOfPairs(PAIR, count, PITCH, shieldMetres), PAIR);
    }

    private static CoupledPort port(int pairs, CoupledElement... elements) {
        return new CoupledPort(CoupledNetwork.ofPairs(List.of(elements), 100), pairs);
    }

    private static Waveform step(PortResponse response) {
        return PortVoltage.of(response, new RaisedCosineStep(1e-9), 700e-9, 20).reflected();
    }

    /**
     * A pair of a cable of twisted pairs is the pair that it is by itself, and hears nothing of the others, if all else is far
     * off; a shield 20 mm away changes what it reflects by less than 1e-3.
     */
    @Test
    void pairAmongOthersIsThePairByItself() {
        pairAmongOthersIsThePairByItself(pairs(4, 100), 1e-10);
        pairAmongOthersIsThePairByItself(FOUR_PAIRS, 1e-6);
        pairAmongOthersIsThePairByItself(pairs(4, 20e-3), 1e-3);
    }

    private static void pairAmongOthersIsThePairByItself(CoupledLine line, double allowed) {
        CoupledNetwork network = CoupledNetwork.ofPairs(List.of(new Length(line, 40)), 130);
        CoupledSolver.Voltages at = new CoupledPort(network, 2).voltages(SWEEP);
        Network alone = new Network(List.of(new Element.Line(PAIR, 40, Set.of())), new Load.Part(Lumped.resistor(130)));
        ComplexArray gamma = ReflectionSolver.reflection(alone, 130, SWEEP);
        for (int k = 0; k < SWEEP.count(); k++) {
            assertEquals(gamma.re(k), at.near().get(2).re(k) - 1, allowed);
            assertEquals(gamma.im(k), at.near().get(2).im(k), allowed);
            for (int other : new int[] {0, 1, 3}) {
                assertEquals(0, at.near().get(other).magnitude(k), 1e-9);
                assertEquals(0, at.far().get(other).magnitude(k), 1e-9);
            }
        }
    }

    /** Two pairs on the diagonals of a star quad share no field either. */
    @Test
    void diagonalsOfAQuadHearNothingOfEachOther() {
        WireLayout layout = WireLayout.quads(PAIR, new double[][] {{-2e-3, 0}, {2e-3, 0}}, SHEATH);
        CoupledLine line = CoupledLine.of(layout, PAIR);
        CoupledSolver.Voltages at = port(0, new Length(line, 40)).voltages(SWEEP);
        for (int k = 0; k < SWEEP.count(); k++) {
            for (int other = 1; other < 4; other++) {
                assertEquals(0, at.near().get(other).magnitude(k), 1e-9);
            }
        }
    }

    private static final double SPLIT = 15;
    private static final double BETWEEN = 12;
    private static final double THERE = 2 * SPLIT * SECONDS_PER_METRE;
    private static final double AFTER = 2 * (SPLIT + BETWEEN) * SECONDS_PER_METRE;
    private static final Joint JOINT = Joint.splitting(2, 0, 1);
    private static final Joint JOINT_OF_FOUR = Joint.splitting(4, 0, 1);

    private static CoupledPort split(CoupledLine line) {
        return port(0, new Length(line, SPLIT), JOINT, new Length(line, BETWEEN), JOINT, new Length(line, 25));
    }

    /**
     * Reflections of the even and the odd mode of the two circuits between the joints, circuit 0 on wires 0 and 3, circuit 1
     * on wires 2 and 1. On two like circuits in one medium a mode has the impedance v (L ± M) (Paul, Analysis of
     * Multiconductor Transmission Lines, 2nd ed., ch. 7, from memory).
     */
    private static double[] modesBetween() {
        double[][] l = TWO_PAIRS.inductanceHenriesPerMetre();
        double own = l[0][0] + l[3][3] - 2 * l[0][3];
        double mutual = l[0][2] - l[0][1] - l[3][2] + l[3][1];
        double z = PAIR.impedanceOhms();
        double even = (own + mutual) / SECONDS_PER_METRE;
        double odd = (own - mutual) / SECONDS_PER_METRE;
        return new double[] {(even - z) / (even + z), (odd - z) / (odd + z)};
    }

    /**
     * Up at the split, down at the re-split: half of the sum of both modes' reflections, then the same of −ρ(1 − ρ²). Crosstalk
     * starts and stops there: half of the difference. On the same wires without loss, where levels stay.
     */
    @Test
    void splitReflectsUpAndResplitDownAndCrosstalkStartsAndStopsThere() {
        double[] rho = modesBetween();
        double up = (rho[0] + rho[1]) / 2;
        double down = -(rho[0] * (1 - rho[0] * rho[0]) + rho[1] * (1 - rho[1] * rho[1])) / 2;
        double crosstalk = (rho[0] - rho[1]) / 2;
        double stop = -(rho[0] * (1 - rho[0] * rho[0]) - rho[1] * (1 - rho[1] * rho[1])) / 2;
        assertTrue(up > 0.1 && Math.abs(crosstalk) > 0.1);
        CoupledPort port =
                split(CoupledLine.inOneDielectric(TWO_PAIRS.inductanceHenriesPerMetre(), PAIR.velocityFraction()));
        Waveform back = step(port.reflection());
        Waveform heard = step(port.nearEndCrosstalk(1));
        assertEquals(0, back.at(THERE - 1e-9), 1e-4);
        assertEquals(up, back.at(THERE + 10e-9), 1e-4);
        assertEquals(up, back.at(AFTER - 1e-9), 1e-4);
        assertEquals(up + down, back.at(AFTER + 10e-9), 1e-4);
        assertEquals(0, heard.at(THERE - 1e-9), 1e-4);
        assertEquals(crosstalk, heard.at(THERE + 10e-9), 1e-4);
        assertEquals(crosstalk + stop, heard.at(AFTER + 10e-9), 1e-4);
    }

    /** On the wires as they are, loss rounds the same picture and takes some of it. */
    @Test
    void lossTakesSomeOfTheSplitAndTurnsNothingRound() {
        double[] rho = modesBetween();
        CoupledPort port = split(TWO_PAIRS);
        Waveform back = step(port.reflection());
        Waveform heard = step(port.nearEndCrosstalk(1));
        double up = back.at(THERE + 20e-9) - back.at(THERE - 5e-9);
        double down = back.at(AFTER + 20e-9) - back.at(AFTER - 5e-9);
        assertEquals(0.85, up / ((rho[0] + rho[1]) / 2), 0.1);
        assertTrue(down < -0.5 * up && down > -up);
        assertEquals(0, heard.at(THERE - 5e-9), 1e-4);
        assertEquals(0.85, heard.at(THERE + 20e-9) / ((rho[0] - rho[1]) / 2), 0.1);
        assertTrue(Math.abs(heard.at(AFTER + 60e-9)) < 0.4 * Math.abs(heard.at(AFTER - 5e-9)));
    }

    /** In a cable of four pairs the two that are not split hear far less than the one that is. */
    @Test
    void otherPairsHearLittleOfASplit() {
        CoupledPort port = port(0, new Length(FOUR_PAIRS, SPLIT), JOINT_OF_FOUR, new Length(FOUR_PAIRS, 25));
        double there = 2 * SPLIT * SECONDS_PER_METRE + 20e-9;
        double split = Math.abs(step(port.nearEndCrosstalk(1)).at(there));
        assertTrue(split > 0.1);
        assertTrue(Math.abs(step(port.nearEndCrosstalk(2)).at(there)) < 0.1 * split);
        assertTrue(Math.abs(step(port.nearEndCrosstalk(3)).at(there)) < 0.1 * split);
    }

    /** At a split without re-split the far circuits each hold one wire of both near ones: each hears half. */
    @Test
    void splitWithNoResplitSharesTheWaveBetweenTheFarEnds() {
        CoupledPort port = port(0, new Length(TWO_PAIRS, 10), JOINT, new Length(TWO_PAIRS, 10));
        double own = step(port.farEnd(0)).at(200e-9);
        double other = step(port.farEnd(1)).at(200e-9);
        assertEquals(own, other, 1e-9);
        // What the loss of 20 m leaves of a half.
        assertEquals(0.48, own, 0.02);
    }

    @Test
    void permutingBackEqualsNone() {
        Joint crossing = new Joint(3, 1, 0, 2, 7, 6, 5, 4);
        CoupledSolver.Voltages none =
                port(1, new Length(FOUR_PAIRS, 10), new Length(FOUR_PAIRS, 14)).voltages(SWEEP);
        CoupledSolver.Voltages there = port(
                        1, new Length(FOUR_PAIRS, 10), crossing, crossing.undone(), new Length(FOUR_PAIRS, 14))
                .voltages(SWEEP);
        CoupledSolver.Voltages whole = port(1, new Length(FOUR_PAIRS, 24)).voltages(SWEEP);
        for (int end = 0; end < 4; end++) {
            assertArrayEquals(
                    none.near().get(end).copyOfReal(), there.near().get(end).copyOfReal());
            assertArrayEquals(
                    none.far().get(end).copyOfImaginary(), there.far().get(end).copyOfImaginary());
            assertArrayEquals(
                    whole.near().get(end).copyOfReal(), none.near().get(end).copyOfReal(), 1e-9);
            assertArrayEquals(
                    whole.far().get(end).copyOfImaginary(), none.far().get(end).copyOfImaginary(), 1e-9);
        }
        assertEquals(JOINT, JOINT.undone());
    }

    /** Driver and hearer change places, and no more comes to the ends than goes out. */
    @Test
    void splitCableIsReciprocalAndPassive() {
        CoupledNetwork network = CoupledNetwork.ofPairs(
                List.of(
                        new Length(FOUR_PAIRS, 7),
                        JOINT_OF_FOUR,
                        new Length(FOUR_PAIRS, 5),
                        new Joint(0, 5, 2, 3, 4, 1, 6, 7)),
                100);
        for (int one = 0; one < 4; one++) {
            CoupledSolver.Voltages at = new CoupledPort(network, one).voltages(SWEEP);
            for (int other = 0; other < one; other++) {
                ComplexArray heard =
                        new CoupledPort(network, other).voltages(SWEEP).near().get(one);
                assertArrayEquals(heard.copyOfReal(), at.near().get(other).copyOfReal(), 1e-10);
                assertArrayEquals(heard.copyOfImaginary(), at.near().get(other).copyOfImaginary(), 1e-10);
            }
            for (int k = 0; k < SWEEP.count(); k++) {
                double sum = Math.pow(at.near().get(one).re(k) - 1, 2)
                        + Math.pow(at.near().get(one).im(k), 2);
                for (int end = 0; end < 4; end++) {
                    sum += Math.pow(at.far().get(end).magnitude(k), 2);
                    sum += end == one ? 0 : Math.pow(at.near().get(end).magnitude(k), 2);
                }
                assertTrue(sum <= 1 + 1e-9, "shares of power make " + sum);
            }
        }
    }

    /**
     * Straight thin wires at the corners of a rectangle, 24 AWG a spacing of 0.932 mm apart, pairs a pitch h apart: what two
     * split circuits share over what each has, 0.268, 0.347, 0.405, 0.481 for h/s = 1, 1.5, 2, 3 (physics reference).
     */
    @Test
    void straightSplitCircuitsShareWhatTheReferenceSays() {
        double s = 0.932e-3;
        double[][] published = {{1, 0.268}, {1.5, 0.347}, {2, 0.405}, {3, 0.481}};
        for (double[] row : published) {
            double h = row[0] * s;
            double[][] places = {{0, 0}, {0, s}, {h, 0}, {h, s}};
            double[][] l = WireLayout.straight(0.511e-3 / 2, places, 10).inductanceHenriesPerMetre();
            double own = l[0][0] + l[2][2] - 2 * l[0][2];
            double mutual = l[0][1] - l[0][3] - l[2][1] + l[2][3];
            assertEquals(row[1], mutual / own, 1e-3);
        }
    }

    /** Over a plane far wider than the wire is high a wire has (μ0/2π) ln(2h/r); a wide shield is such a plane. */
    @Test
    void wireNearAWideShieldIsAWireOverAPlane() {
        double height = 1e-3;
        double radius = 0.1e-3;
        double[][] l = WireLayout.straight(radius, new double[][] {{1 - height, 0}, {1 - height, 2e-3}}, 1)
                .inductanceHenriesPerMetre();
        assertEquals(2e-7 * Math.log(2 * height / radius), l[0][0], 2e-10);
        // Two of them: ln √(1 + (2h/d)²) between.
        assertEquals(1e-7 * Math.log(1 + 1), l[0][1], 5e-10);
    }

    @Test
    void wiresThatTouchOrStickOutAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> WireLayout.straight(1e-3, new double[][] {{0, 0}, {1.5e-3, 0}}, 1));
        assertThrows(
                IllegalArgumentException.class, () -> WireLayout.straight(1e-3, new double[][] {{9.5e-3, 0}}, 1e-2));
        assertThrows(IllegalArgumentException.class, () -> WireLayout.ringOfPairs(PAIR, 4, 1e-3, SHEATH));
        assertThrows(IllegalArgumentException.class, () -> Joint.splitting(4, 0, 4));
    }
}

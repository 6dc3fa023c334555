// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.Cross;
import cablewright.simulator.cable.hardware.OneSideEarthed;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.split.CommonMode;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.port.SimulatedPort;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * One wire to earth, and one wire to a wire of another pair, against the engine of coupled wires, which joins those wires and knows
 * nothing of common modes.
 */
class WireContactTest {

    private static final CableType TYPE = Catalogue.standard().type("cat-5e");
    private static final PairSection PAIR = (PairSection) TYPE.section();
    private static final double SPACING = PAIR.geometry().spacingMetres();

    /** So far off that the pair itself hardly notices. */
    private static final double OVER_SPACING = 20;

    private static final double PITCH = 2;
    private static final double BEFORE = 12;
    private static final double BEHIND = 20;
    private static final double OHMS = 30;
    private static final double[] SLOW = {1e3, 1e4, 1e5, 2e5};
    private static final double[] FAST = {2e7, 5e7, 1e8};

    private static ComplexArray byWires(
            double[][] pairs, double shieldMetres, int to, double ohms, List<Tie> ends, double... hertz) {
        CoupledLine line = CoupledLine.of(WireLayout.pairs(PAIR, pairs, shieldMetres), PAIR);
        CoupledNetwork network = new CoupledNetwork(
                List.of(
                        new CoupledElement.Length(line, BEFORE),
                        new CoupledElement.Between(0, to, 2 * pairs.length, Lumped.resistor(ohms)),
                        new CoupledElement.Length(line, BEHIND)),
                ends,
                ends);
        ComplexArray volts = CoupledSolver.solve(network, 0, Frequencies.ofSweep(hertz))
                .near()
                .get(0);
        double[] re = volts.copyOfReal();
        for (int k = 0; k < re.length; k++) {
            re[k] -= 1;
        }
        return ComplexArray.takingOver(re, volts.copyOfImaginary());
    }

    private static Event asPart(CommonMode mode, double ohms) {
        return new ShuntPart(
                "x",
                BEFORE,
                new Lumped(
                        Lumped.Joined.SERIES,
                        OptionalDouble.of(ohms + mode.contactOhms(BEFORE, BEHIND)),
                        OptionalDouble.empty(),
                        OptionalDouble.of(mode.contactFarads(BEFORE + BEHIND))));
    }

    private static ComplexArray sweep(List<Event> events, double endOhms, double... hertz) {
        Cable cable =
                new Cable("Pair", List.of(new Run(TYPE, BEFORE + BEHIND)), events, FarEnd.Terminated.byOhms(endOhms));
        return new SimulatedPort(cable, 100).sweep(hertz);
    }

    private static void assertAlike(ComplexArray wires, ComplexArray event, double most, double... hertz) {
        for (int k = 0; k < hertz.length; k++) {
            double apart = Math.hypot(wires.re(k) - event.re(k), wires.im(k) - event.im(k));
            assertTrue(apart < most, hertz[k] + " Hz: " + apart + ", " + wires.re(k) + " and " + event.re(k));
        }
    }

    @Test
    void slowSignalsMeetAnEarthThroughTheCapacitanceOfThePair() {
        ComplexArray wires = byWires(
                new double[][] {{0, 0}},
                OVER_SPACING * SPACING,
                Tie.REFERENCE,
                OHMS,
                List.of(new Tie(0, 1, 100)),
                SLOW);
        Event event = asPart(CommonMode.of(PAIR, OVER_SPACING), 4 * OHMS);
        assertAlike(wires, sweep(List.of(event), 100, SLOW), 0.01, SLOW);
    }

    /** With both wires tied to the surroundings so that the common mode never comes back, an earth is 4 R + 2 Zcm across. */
    @Test
    void fastEdgesMeetAnEarthAsFourTimesItsResistanceAndTwiceTheCommonMode() {
        CommonMode mode = CommonMode.of(PAIR, OVER_SPACING);
        double common = mode.impedanceOhms();
        List<Tie> ends = List.of(
                new Tie(0, 1, 100), new Tie(0, Tie.REFERENCE, 2 * common), new Tie(1, Tie.REFERENCE, 2 * common));
        ComplexArray wires = byWires(new double[][] {{0, 0}}, OVER_SPACING * SPACING, Tie.REFERENCE, OHMS, ends, FAST);
        double across = 4 * common;
        List<Event> events = List.of(new ShuntPart("near", 0, Lumped.resistor(across)), asPart(mode, 4 * OHMS));
        assertAlike(wires, sweep(events, 1 / (1 / 100.0 + 1 / across), FAST), 0.01, FAST);
    }

    /** Both pairs end in their own impedance and float otherwise. */
    @Test
    void slowSignalsMeetACrossThroughTheCapacitanceBetweenThePairs() {
        double[][] pairs = {{0, 0}, {PITCH * SPACING, 0}};
        List<Tie> ends = List.of(new Tie(0, 1, 100), new Tie(2, 3, 100));
        ComplexArray wires = byWires(pairs, WireLayout.FAR_METRES, 2, OHMS, ends, SLOW);
        Event event = asPart(CommonMode.againstPair(PAIR, PITCH), 4 * OHMS + PAIR.impedanceOhms() / 2);
        assertAlike(wires, sweep(List.of(event), 100, SLOW), 0.01, SLOW);
    }

    /** With resistors between the pairs so that what runs between them never comes back: 4 R + 2 Zpp + Z/2 across. */
    @Test
    void fastEdgesMeetACrossAsTheCircuitBetweenThePairsAndTheNeighbour() {
        double[][] pairs = {{0, 0}, {PITCH * SPACING, 0}};
        CommonMode mode = CommonMode.againstPair(PAIR, PITCH);
        double between = mode.impedanceOhms();
        List<Tie> ends = new ArrayList<>(List.of(new Tie(0, 1, 100), new Tie(2, 3, 100)));
        // Four resistors of 4 Zpp from each wire to each of the other pair end that circuit, and lie across each pair
        // as 4 Zpp.
        for (int a : new int[] {0, 1}) {
            for (int b : new int[] {2, 3}) {
                ends.add(new Tie(a, b, 4 * between));
            }
        }
        ComplexArray wires = byWires(pairs, WireLayout.FAR_METRES, 2, OHMS, ends, FAST);
        double across = 4 * between;
        double end = 1 / (1 / 100.0 + 1 / across);
        List<Event> events = List.of(
                new ShuntPart("near", 0, Lumped.resistor(across)), asPart(mode, 4 * OHMS + PAIR.impedanceOhms() / 2));
        assertAlike(wires, sweep(events, end, FAST), 0.02, FAST);
    }

    /**
     * By hand: 100 ohm at 0.7 c has A = π 100/(376.730 · 0.7) = 1.19131; Zcm = 59.9585 · 0.7 (ln 2 + A/2) = 54.092 ohm, between pairs
     * twice as much. Across the line lie 2 Zcm = 108.184 ohm to an earth without resistance and 4 Zcm + 50 = 266.368 ohm to a cross.
     */
    @Test
    void shortestPulsesReflectByHandWorkedShares() {
        CableType type = Catalogue.standard().type("lossless-100");
        for (Event event : List.of(new OneSideEarthed("x", BEFORE, 0), new Cross("x", BEFORE, 0))) {
            Cable cable = new Cable(
                    "Pair", List.of(new Run(type, BEFORE + BEHIND)), List.of(event), FarEnd.Terminated.byOhms(100));
            double across = event instanceof Cross ? 266.368 : 108.184;
            double found = new SimulatedPort(cable, 100).sweep(1e10).magnitude(0);
            assertEquals(100 / (2 * across + 100), found, 2e-4);
        }
    }

    @Test
    void eventsAreThoseParts() {
        double[] hertz = {1e4, 1e6, 1e8};
        ComplexArray earthed = sweep(List.of(new OneSideEarthed("x", BEFORE, OHMS)), 100, hertz);
        ComplexArray crossed = sweep(List.of(new Cross("x", BEFORE, OHMS)), 100, hertz);
        double around = CommonMode.NEIGHBOURS_OVER_SPACING;
        Event earth = asPart(CommonMode.of(PAIR, around), 4 * OHMS);
        Event cross = asPart(CommonMode.againstPair(PAIR, around), 4 * OHMS + PAIR.impedanceOhms() / 2);
        ComplexArray asEarth = sweep(List.of(earth), 100, hertz);
        ComplexArray asCross = sweep(List.of(cross), 100, hertz);
        for (int k = 0; k < hertz.length; k++) {
            assertEquals(asEarth.re(k), earthed.re(k), 1e-14);
            assertEquals(asCross.re(k), crossed.re(k), 1e-14);
        }
    }

    @Test
    void coaxIsRefused() {
        for (Event event : List.of(new OneSideEarthed("x", 10, 5), new Cross("x", 10, 5))) {
            Cable coax = new Cable(
                    "Coax",
                    List.of(new Run(Catalogue.standard().type("drop-6-foam"), 30)),
                    List.of(event),
                    new FarEnd.Open());
            String said = assertThrows(IllegalArgumentException.class, () -> new SimulatedPort(coax, 75).sweep(1e6))
                    .getMessage();
            assertTrue(said.contains("put it on a pair"), said);
        }
    }
}

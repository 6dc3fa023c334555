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
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.SeriesPart;
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
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** One broken wire of a pair against the engine of coupled wires, which cuts that wire and knows nothing of common modes. */
class BrokenWireTest {

    private static final CableType TYPE = Catalogue.standard().type("cat-5e");
    private static final PairSection PAIR = (PairSection) TYPE.section();

    /** So far off that the pair itself hardly notices. */
    private static final double OVER_SPACING = 20;

    private static final double SURROUNDINGS = OVER_SPACING * PAIR.geometry().spacingMetres();
    private static final double BEFORE = 12;
    private static final double BEHIND = 20;

    private static ComplexArray byWires(List<Tie> more, double... hertz) {
        CoupledLine line = CoupledLine.of(WireLayout.pairs(PAIR, new double[][] {{0, 0}}, SURROUNDINGS), PAIR);
        List<Tie> ends = new ArrayList<>(List.of(new Tie(0, 1, 100)));
        ends.addAll(more);
        CoupledNetwork network = new CoupledNetwork(
                List.of(
                        new CoupledElement.Length(line, BEFORE),
                        new CoupledElement.InConductor(0, 2, Optional.empty()),
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

    private static Event asPart(double overSpacing) {
        CommonMode mode = CommonMode.of(PAIR, overSpacing);
        return new SeriesPart(
                "x",
                BEFORE,
                new Lumped(
                        Lumped.Joined.SERIES,
                        OptionalDouble.of(mode.breakOhms()),
                        OptionalDouble.empty(),
                        OptionalDouble.of(mode.breakFarads(BEFORE, BEHIND))));
    }

    private static ComplexArray sweep(List<Event> events, double endOhms, double... hertz) {
        Cable cable =
                new Cable("Pair", List.of(new Run(TYPE, BEFORE + BEHIND)), events, FarEnd.Terminated.byOhms(endOhms));
        return new SimulatedPort(cable, 100).sweep(hertz);
    }

    /** Slowly, with the common mode floating, the broken wire is the stated capacitance. */
    @Test
    void slowSignalsMeetTheCapacitanceOfBothLengths() {
        double[] hertz = {1e3, 1e4, 1e5, 2e5};
        ComplexArray wires = byWires(List.of(), hertz);
        ComplexArray event = sweep(List.of(asPart(OVER_SPACING)), 100, hertz);
        for (int k = 0; k < hertz.length; k++) {
            assertEquals(wires.re(k), event.re(k), 0.01, hertz[k] + " Hz");
            assertEquals(wires.im(k), event.im(k), 0.01, hertz[k] + " Hz");
        }
    }

    /** With each wire tied to the surroundings so that the common mode never comes back, the break is 8 Zcm. */
    @Test
    void fastEdgesMeetEightTimesTheCommonModesImpedance() {
        double common = CommonMode.of(PAIR, OVER_SPACING).impedanceOhms();
        // Two resistors of 2 Zcm side by side end the common mode; across the pair they add 4 Zcm, which 100 ohm must
        // yield.
        List<Tie> ties = List.of(new Tie(0, Tie.REFERENCE, 2 * common), new Tie(1, Tie.REFERENCE, 2 * common));
        double[] hertz = {2e7, 5e7, 1e8};
        ComplexArray wires = byWires(ties, hertz);
        // By hand: the same ends in place of the matched ones, and a resistor in series.
        double across = 4 * common;
        List<Event> events = List.of(new ShuntPart("near", 0, Lumped.resistor(across)), asPart(OVER_SPACING));
        ComplexArray event = sweep(events, 1 / (1 / 100.0 + 1 / across), hertz);
        for (int k = 0; k < hertz.length; k++) {
            double apart = Math.hypot(wires.re(k) - event.re(k), wires.im(k) - event.im(k));
            assertTrue(apart < 0.01, hertz[k] + " Hz: " + apart);
        }
    }

    @Test
    void eventWithoutACapacitanceIsThatPartAmongTheOtherPairsOfTheCable() {
        double[] hertz = {1e4, 1e6, 1e8};
        Event event = new OneSideOpen("x", BEFORE, OptionalDouble.empty());
        ComplexArray found = sweep(List.of(event), 100, hertz);
        ComplexArray expected = sweep(List.of(asPart(CommonMode.NEIGHBOURS_OVER_SPACING)), 100, hertz);
        for (int k = 0; k < hertz.length; k++) {
            assertEquals(expected.re(k), found.re(k), 1e-14);
            assertEquals(expected.im(k), found.im(k), 1e-14);
        }
    }

    @Test
    void coaxNeedsTheCapacitance() {
        Cable coax = new Cable(
                "Coax",
                List.of(new Run(Catalogue.standard().type("drop-6-foam"), 30)),
                List.of(new OneSideOpen("x", BEFORE, OptionalDouble.empty())),
                new FarEnd.Open());
        String said = assertThrows(IllegalArgumentException.class, () -> new SimulatedPort(coax, 75).sweep(1e6))
                .getMessage();
        assertTrue(said.contains("bridgingCapacitanceFarads is missing"), said);
    }
}

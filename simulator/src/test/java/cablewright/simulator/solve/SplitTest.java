// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.PairGeometry;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.field.FieldValues;
import cablewright.simulator.field.LineField;
import cablewright.simulator.field.LinePlaces;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.multiconductor.CoupledElement;
import cablewright.simulator.multiconductor.CoupledElement.Joint;
import cablewright.simulator.multiconductor.CoupledElement.Length;
import cablewright.simulator.multiconductor.CoupledLine;
import cablewright.simulator.multiconductor.CoupledNetwork;
import cablewright.simulator.multiconductor.CoupledSolver;
import cablewright.simulator.multiconductor.NearEndCrosstalk;
import cablewright.simulator.multiconductor.NeighbourPort;
import cablewright.simulator.multiconductor.Tie;
import cablewright.simulator.multiconductor.WireLayout;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Splits of a cable against two outside judges: the coupled engine, which permutes four wires and knows nothing of the two
 * modes, and the closed forms of even and odd modes (C. R. Paul, Analysis of Multiconductor Transmission Lines, 2nd ed.,
 * ch. 9, from memory).
 */
class SplitTest {

    private static final CableType TYPE = Catalogue.standard().type("cat-5e");
    private static final PairSection PAIR = (PairSection) TYPE.section();
    private static final double SPACING = PAIR.geometry().spacingMetres();
    private static final double OPEN = 1e12;
    private static final double[] SWEEP = {1e4, 1e6, 3.3e6, 1e7, 3.3e7, 1e8, 3e8};

    /** Wires that are laid straight are as long as the cable. */
    private static final PairSection UNTWISTED = new PairSection(
            PAIR.wire(),
            PAIR.effectiveDielectric(),
            PAIR.insulationPermittivity(),
            new PairGeometry(
                    PAIR.geometry().wireDiameterMetres(),
                    SPACING,
                    SPACING,
                    SPACING,
                    1,
                    1,
                    PAIR.geometry().bundle()),
            PAIR.surroundings());

    private static PairSection pair(SplitLayout layout) {
        return layout == SplitLayout.STRAIGHT ? UNTWISTED : PAIR;
    }

    private static SplitShape shape(SplitLayout layout) {
        return new SplitShape(layout, layout == SplitLayout.QUAD ? OptionalDouble.empty() : OptionalDouble.of(2));
    }

    private static CoupledLine line(SplitLayout layout, PairSection pair) {
        double h = 2 * SPACING;
        double x = h / pair.geometry().wireDiameterMetres();
        switch (layout) {
            case TWISTED:
                return CoupledLine.of(
                        WireLayout.pairs(pair, new double[][] {{-h / 2, 0}, {h / 2, 0}}, WireLayout.FAR_METRES), pair);
            case QUAD:
                return CoupledLine.of(WireLayout.quads(pair, new double[][] {{0, 0}}, WireLayout.FAR_METRES), pair);
            default:
                double[][] corners = {
                    {-h / 2, -SPACING / 2}, {-h / 2, SPACING / 2}, {h / 2, SPACING / 2}, {h / 2, -SPACING / 2}
                };
                double radius = h / (x + Math.sqrt(x * x - 1));
                return CoupledLine.of(WireLayout.straight(radius, corners, WireLayout.FAR_METRES), pair);
        }
    }

    /** The same by four wires and their joints: voltages across both near ends, the neighbour's wires named as the shape's. */
    private static CoupledSolver.Voltages byWires(
            SplitLayout layout, double before, double length, double after, double far, boolean putRight) {
        PairSection pair = pair(layout);
        CoupledLine apart = line(layout == SplitLayout.STRAIGHT ? SplitLayout.TWISTED : layout, pair);
        List<CoupledElement> elements = new ArrayList<>();
        elements.add(new Length(apart, before));
        elements.add(Joint.splitting(2, 0, 1));
        elements.add(new Length(line(layout, pair), length));
        if (putRight) {
            elements.add(Joint.splitting(2, 0, 1));
            elements.add(new Length(apart, after));
        }
        Tie neighbour = layout == SplitLayout.QUAD ? new Tie(2, 3, OPEN) : new Tie(3, 2, OPEN);
        List<Tie> near = List.of(new Tie(0, 1, 100), neighbour);
        List<Tie> ends = List.of(
                new Tie(0, 1, far), new Tie(neighbour.from(), neighbour.to(), putRight ? neighbour.ohms() : far));
        return CoupledSolver.solve(new CoupledNetwork(elements, near, ends), 0, Frequencies.ofSweep(SWEEP));
    }

    private static Cable split(
            SplitLayout layout, double before, double length, double after, double far, boolean right) {
        Event event = new Split("s", before, length, shape(layout), right, NeighbourEnd.OPEN, NeighbourEnd.OPEN);
        return cable(
                TestCables.type(pair(layout)),
                before + length + (right ? after : 0),
                FarEnd.Terminated.byOhms(far),
                event);
    }

    /** Loss and all, an idle neighbour open at both ends, the line ended off its impedance. */
    @ParameterizedTest
    @CsvSource({"TWISTED, true", "QUAD, true", "STRAIGHT, true", "TWISTED, false", "QUAD, false"})
    void reflectsAndIsHeardAsFourPermutedWiresAre(SplitLayout layout, boolean putRight) {
        CoupledSolver.Voltages wires = byWires(layout, 15, 12, 25, 60, putRight);
        Cable cable = split(layout, 15, 12, 25, 60, putRight);
        ComplexArray gamma = new SimulatedPort(cable, 100).sweep(SWEEP);
        ComplexArray heard = new NeighbourPort(cable, 100, "s").sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(wires.near().get(0).re(k) - 1, gamma.re(k), 2e-5);
            assertEquals(wires.near().get(0).im(k), gamma.im(k), 2e-5);
            assertEquals(wires.near().get(1).re(k), heard.re(k), 2e-5);
            assertEquals(wires.near().get(1).im(k), heard.im(k), 2e-5);
        }
    }

    /** Voltage at the load, by the wave followed through the stretch, against what arrives at the far end of the wires. */
    @ParameterizedTest
    @CsvSource({"TWISTED", "QUAD", "STRAIGHT"})
    void arrivesAtTheLoadAsOverFourWires(SplitLayout layout) {
        CoupledSolver.Voltages wires = byWires(layout, 15, 12, 25, 60, true);
        LineField field = new LineField(
                split(layout, 15, 12, 25, 60, true),
                100,
                List.of(new LinePlaces(List.of(), List.of(15.0, 15 + 1e-6, 52.0))));
        FieldValues values = field.upTo(1e9).at(Frequencies.ofSweep(SWEEP));
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(wires.far().get(0).re(k), values.volts(2).re(k), 2e-5);
            assertEquals(wires.far().get(0).im(k), values.volts(2).im(k), 2e-5);
            assertEquals(values.volts(0).re(k), values.volts(1).re(k), 1e-4);
            assertEquals(values.amperes(0).im(k), values.amperes(1).im(k), 1e-6);
        }
    }

    /** With an idle neighbour and no loss, what does not come back is what the load takes. */
    @ParameterizedTest
    @CsvSource({"TWISTED", "QUAD", "STRAIGHT"})
    void noPowerIsLostWhereNothingHasLoss(SplitLayout layout) {
        Event event = new Split("s", 5, 4, shape(layout), true, NeighbourEnd.OPEN, NeighbourEnd.SHORT);
        Cable cable = cable(lossless(100, 2e8), 12, FarEnd.Terminated.byOhms(60), event);
        ComplexArray gamma = new SimulatedPort(cable, 100).sweep(SWEEP);
        LineField field = new LineField(cable, 100, List.of(new LinePlaces(List.of(), List.of(6.0, 12.0))));
        FieldValues values = field.upTo(1e9).at(Frequencies.ofSweep(SWEEP));
        for (int k = 0; k < SWEEP.length; k++) {
            double back = gamma.magnitude(k) * gamma.magnitude(k);
            double taken = values.volts(1).magnitude(k) * values.volts(1).magnitude(k) / 60 * 100;
            assertEquals(1, back + taken, 1e-9);
        }
    }

    /** Matched neighbour: its ends take their share too, as much as it hears, and never more than is there. */
    @Test
    void neighbourTakesWhatItHears() {
        Event event = new Split("s", 5, 4, shape(SplitLayout.TWISTED), true, NeighbourEnd.MATCHED, NeighbourEnd.OPEN);
        Cable cable = cable(lossless(100, 2e8), 12, new FarEnd.Open(), event);
        ComplexArray gamma = new SimulatedPort(cable, 100).sweep(SWEEP);
        ComplexArray heard = new NeighbourPort(cable, 100, "s").sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            double sum = gamma.magnitude(k) * gamma.magnitude(k) + heard.magnitude(k) * heard.magnitude(k);
            assertEquals(1, sum, 1e-9);
        }
    }

    /** Each side's crosstalk by a solution of its own; with open far ends and no loss all power comes back at the two ports. */
    @ParameterizedTest
    @CsvSource({"TWISTED", "QUAD", "STRAIGHT"})
    void crosstalkIsTheSameBothWaysAndKeepsThePower(SplitLayout layout) {
        Event event = new Split("s", 5, 4, shape(layout), true, NeighbourEnd.MATCHED, NeighbourEnd.SHORT);
        Event joint = new TouchingConductors("j", 2, OptionalDouble.of(300));
        Cable lossy = cable(TYPE, 14, FarEnd.Terminated.byOhms(40), event, joint);
        List<ComplexArray> s = new NearEndCrosstalk(lossy, "s", 100, 120).sweep(SWEEP);
        Cable bare = cable(lossless(100, 2e8), 14, new FarEnd.Open(), event);
        List<ComplexArray> power = new NearEndCrosstalk(bare, "s", 75, 150).sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(s.get(1).re(k), s.get(2).re(k), 1e-10);
            assertEquals(s.get(1).im(k), s.get(2).im(k), 1e-10);
            for (int port = 0; port < 2; port++) {
                double own = power.get(3 * port).magnitude(k);
                double other = power.get(2 - port).magnitude(k);
                assertEquals(1, own * own + other * other, 1e-9);
            }
        }
    }

    /** Up by (ρe + ρo)/2 at the split, by −Σρ(1 − ρ²)/2 at the re-split; heard (ρe − ρo)/2 for as long as the split lasts. */
    @ParameterizedTest
    @CsvSource({"TWISTED", "QUAD", "STRAIGHT"})
    void stepsUpAtTheSplitAndDownAtTheResplitAndIsHeardInBetween(SplitLayout layout) {
        Event event = new Split("s", 15, 12, shape(layout), true, NeighbourEnd.MATCHED, NeighbourEnd.MATCHED);
        Cable cable = cable(lossless(100, 2e8), 60, FarEnd.Terminated.byOhms(100), event);
        SplitShape.Modes modes = shape(layout).modes(lossless(100, 2e8).section());
        double even = (modes.even() - 1) / (modes.even() + 1);
        double odd = (modes.odd() - 1) / (modes.odd() + 1);
        Waveform back = step(new SimulatedPort(cable, 100));
        Waveform heard = step(new NeighbourPort(cable, 100, "s"));
        double there = 150e-9;
        double after = 270e-9;
        assertEquals(0, back.at(there - 2e-9), 1e-5);
        assertEquals((even + odd) / 2, back.at(there + 20e-9), 1e-5);
        double down = -(even * (1 - even * even) + odd * (1 - odd * odd)) / 2;
        assertEquals((even + odd) / 2 + down, back.at(after + 20e-9), 1e-5);
        assertEquals(layout == SplitLayout.QUAD, back.at(there + 20e-9) < 0);
        assertEquals(0, heard.at(there - 2e-9), 1e-5);
        assertEquals((even - odd) / 2, heard.at(there + 20e-9), 1e-5);
        assertEquals((even - odd) / 2, heard.at(after - 2e-9), 1e-5);
        double stop = -(even * (1 - even * even) - odd * (1 - odd * odd)) / 2;
        assertEquals((even - odd) / 2 + stop, heard.at(after + 20e-9), 1e-5);
        assertTrue(Math.abs(heard.at(after + 20e-9)) < 0.3 * Math.abs(heard.at(after - 2e-9)));
    }

    private static Waveform step(PortResponse response) {
        return PortVoltage.of(response, new RaisedCosineStep(1e-9), 500e-9, 20).reflected();
    }

    /** Twisted pairs two spacings apart, s/d = 1.8235: A = 1.2086, (1 + 2 ln 2/A) 100 Ω = 214.7 Ω in one mode, 100 Ω in the other. */
    @Test
    void modesAreThoseOfTheirFormulas() {
        SplitShape.Modes twisted = shape(SplitLayout.TWISTED).modes(PAIR);
        double a = Math.log(SPACING / 0.511e-3 + Math.sqrt(Math.pow(SPACING / 0.511e-3, 2) - 1));
        assertEquals(1 + 2 * Math.log(2) / a, twisted.even(), 1e-12);
        assertEquals(1, twisted.odd(), 0);
        SplitShape.Modes quad = shape(SplitLayout.QUAD).modes(PAIR);
        assertEquals(1, quad.even(), 0);
        assertEquals(1 - Math.log(2) / a, quad.odd(), 1e-12);
    }

    /** Put right at once, a split is none. */
    @Test
    void splitOfNoLengthIsNone() {
        Cable cable = split(SplitLayout.TWISTED, 15, 1e-6, 25, 60, true);
        ComplexArray with = new SimulatedPort(cable, 100).sweep(SWEEP);
        ComplexArray without = new SimulatedPort(cable.withoutEvent("s"), 100).sweep(SWEEP);
        ComplexArray heard = new NeighbourPort(cable, 100, "s").sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(without.re(k), with.re(k), 1e-5);
            assertEquals(without.im(k), with.im(k), 1e-5);
            assertEquals(0, heard.magnitude(k), 1e-5);
        }
    }

    /** From the other end it is the same stretch with the neighbour's ends changed over; without re-split, the same joint. */
    @Test
    void mirroredTwiceItIsItself() {
        Split right = new Split("s", 10, 5, shape(SplitLayout.STRAIGHT), true, NeighbourEnd.OPEN, NeighbourEnd.MATCHED);
        assertEquals(right, right.mirrored(40).mirrored(40));
        assertEquals(25, right.mirrored(40).startMetres());
        Split left = new Split("s", 10, 30, shape(SplitLayout.TWISTED), false, NeighbourEnd.OPEN, NeighbourEnd.MATCHED);
        assertEquals(left, left.mirrored(40).mirrored(40));
        assertEquals(30, left.mirrored(40).startMetres());
    }

    /** A joint and a contact between split and re-split act on the tested circuit only, and stay passive. */
    @Test
    void thingsWithinTheStretchStandInTheTestedCircuit() {
        Cable plain = split(SplitLayout.TWISTED, 15, 12, 25, 100, true);
        List<Event> events = new ArrayList<>(plain.events());
        events.add(new TouchingConductors("x", 20, OptionalDouble.empty()));
        ComplexArray shorted = new SimulatedPort(plain.withEvents(events), 100).sweep(SWEEP);
        events.set(1, new TouchingConductors("x", 20, OptionalDouble.of(1e-6)));
        ComplexArray nearly = new SimulatedPort(plain.withEvents(events), 100).sweep(SWEEP);
        events.set(1, new CorrodedJoint("x", 20, 1e-6, OptionalDouble.empty()));
        ComplexArray hardly = new SimulatedPort(plain.withEvents(events), 100).sweep(SWEEP);
        ComplexArray without = new SimulatedPort(plain, 100).sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(nearly.re(k), shorted.re(k), 1e-6);
            assertEquals(nearly.im(k), shorted.im(k), 1e-6);
            assertEquals(without.re(k), hardly.re(k), 1e-6);
            assertTrue(shorted.magnitude(k) < 1);
        }
    }

    @Test
    void refusesWhatCanNotBe() {
        SplitShape twisted = shape(SplitLayout.TWISTED);
        Split short1 = new Split("a", 5, 5, twisted, false, NeighbourEnd.OPEN, NeighbourEnd.OPEN);
        assertThrows(IllegalArgumentException.class, () -> cable(TYPE, 20, new FarEnd.Open(), short1));
        Split one = new Split("a", 5, 5, twisted, true, NeighbourEnd.OPEN, NeighbourEnd.OPEN);
        Split two = new Split("b", 8, 5, twisted, true, NeighbourEnd.OPEN, NeighbourEnd.OPEN);
        assertThrows(IllegalArgumentException.class, () -> cable(TYPE, 20, new FarEnd.Open(), one, two));
        Cable coax = cable(Catalogue.standard().type("drop-6-foam"), 20, new FarEnd.Open(), one);
        String said = assertThrows(IllegalArgumentException.class, () -> new SimulatedPort(coax, 75).sweep(1e6))
                .getMessage();
        assertTrue(said.contains("coax has no pair"), said);
        assertThrows(IllegalArgumentException.class, () -> new NeighbourPort(coax, 75, "nothing"));
    }
}

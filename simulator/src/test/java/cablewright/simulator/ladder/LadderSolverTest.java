// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.ladder;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Lumped.Joined;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.ReflectionSolver;
import cablewright.simulator.wave.EvenTimes;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Two engines that share no formula, on the same circuits: as cells and steps get smaller, they tell the same. */
class LadderSolverTest {

    private static final Set<String> PLAIN = Set.of();
    private static final double RECORD = 400e-9;

    private record Circuit(String name, Network network, double sourceOhms) implements PortResponse {
        @Override
        public String toString() {
            return name;
        }

        @Override
        public double referenceOhms() {
            return sourceOhms;
        }

        @Override
        public Optional<ContourGrid> nativeGrid() {
            return Optional.empty();
        }

        @Override
        public ComplexArray reflection(ContourGrid grid, int count) {
            Frequencies at = grid.points().slice(0, count);
            return ReflectionSolver.reflection(network, sourceOhms, at);
        }
    }

    private static Element line(double r, double g, double ohms, double metres) {
        double slowness = 1 / 2e8;
        return new Element.Line(
                new ConstantsSection(r, ohms * slowness, 0, g, slowness / ohms, List.of()), metres, PLAIN);
    }

    private static Element series(Lumped part) {
        return new Element.Series(part, PLAIN);
    }

    private static Element shunt(Lumped part) {
        return new Element.Shunt(part, PLAIN);
    }

    private static Lumped part(Joined joined, double r, double l, double c) {
        return new Lumped(joined, OptionalDouble.of(r), OptionalDouble.of(l), OptionalDouble.of(c));
    }

    private static Circuit circuit(String name, double sourceOhms, Load load, Element... elements) {
        return new Circuit(name, new Network(List.of(elements), load), sourceOhms);
    }

    static Stream<Circuit> circuits() {
        return Stream.of(
                circuit("lossless, mismatched both ways", 50, new Load.Part(Lumped.resistor(150)), line(0, 0, 75, 8)),
                circuit("R, L, G and C, open", 75, new Load.Open(), line(1, 2e-4, 75, 8)),
                circuit(
                        "parts in series and across, short",
                        75,
                        new Load.Short(),
                        line(0.2, 0, 75, 4),
                        shunt(Lumped.capacitor(20e-12)),
                        line(0.2, 0, 60, 3),
                        series(part(Joined.PARALLEL, 100, 200e-9, 15e-12)),
                        line(0.2, 0, 75, 2),
                        shunt(part(Joined.SERIES, 30, 150e-9, 40e-12))),
                circuit(
                        "branches in branches",
                        75,
                        new Load.Part(Lumped.resistorAcrossCapacitor(75, 30e-12)),
                        line(0, 0, 75, 4),
                        new Element.Branch(
                                new Network(
                                        List.of(
                                                line(0, 0, 75, 2),
                                                new Element.Branch(
                                                        new Network(
                                                                List.of(line(0, 0, 100, 1), new Element.Contact(PLAIN)),
                                                                new Load.Open()),
                                                        PLAIN),
                                                line(0.5, 0, 75, 1)),
                                        new Load.Open()),
                                PLAIN),
                        line(0, 0, 75, 3)));
    }

    private static double[] ladder(Circuit circuit, Stimulus stimulus, double cellSeconds, int steps) {
        LadderSolver solver = new LadderSolver(
                circuit.network(), LadderCells.byDelay(cellSeconds), circuit.sourceOhms(), RECORD / steps);
        return solver.portVolts(t -> 2 * stimulus.at(t), steps);
    }

    private static double worst(double[] a, double[] b) {
        double worst = 0;
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            worst = Math.max(worst, Math.abs(a[i] - b[i]));
        }
        return worst;
    }

    private static double[] thinned(double[] values, int stride) {
        double[] some = new double[(values.length - 1) / stride + 1];
        for (int i = 0; i < some.length; i++) {
            some[i] = values[i * stride];
        }
        return some;
    }

    /** Halving cells and steps together makes the error a quarter; what is extrapolated from two agrees closely. */
    @ParameterizedTest
    @MethodSource("circuits")
    void ladderConvergesOnTheLineWithSecondOrder(Circuit circuit) {
        Stimulus step = new GaussianStep(12e-9);
        int steps = 2000;
        EvenTimes exact = EvenTimes.of(circuit, step, RECORD, steps + 1);
        double[] volts = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            volts[i] = exact.outgoing().sample(i) + exact.reflected().sample(i);
        }
        double[] coarse = ladder(circuit, step, 0.2e-9, steps);
        double[] fine = thinned(ladder(circuit, step, 0.1e-9, 2 * steps), 2);
        double before = worst(coarse, volts);
        double after = worst(fine, volts);
        double[] extrapolated = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            extrapolated[i] = (4 * fine[i] - coarse[i]) / 3;
        }
        System.out.printf(
                "%-34s ladder off by %.1e, with twice the cells and steps %.1e, extrapolated %.1e%n",
                circuit.name(), before, after, worst(extrapolated, volts));
        assertEquals(4, before / after, 0.2);
        assertTrue(before < 2e-3 && worst(extrapolated, volts) < 5e-6, circuit.name());
    }

    /** The same ladder in both engines: what is left is the step of time alone. */
    @Test
    void ladderOfFewCellsIsTheSameInBothEngines() {
        Network network = new Network(List.of(line(0.5, 1e-4, 75, 8)), new Load.Part(Lumped.resistor(100)));
        Circuit lumped = new Circuit("lumped", LadderCells.replace(network, line -> 12), 50);
        Stimulus step = new RaisedCosineStep(3e-9);
        EvenTimes exact = EvenTimes.of(lumped, step, RECORD, 2001);
        double[] fine = thinned(ladder(lumped, step, 1, 32_000), 16);
        double[] finer = thinned(ladder(lumped, step, 1, 64_000), 32);
        double worst = 0;
        for (int i = 0; i <= 2000; i++) {
            double volts = exact.outgoing().sample(i) + exact.reflected().sample(i);
            worst = Math.max(worst, Math.abs((4 * finer[i] - fine[i]) / 3 - volts));
        }
        assertEquals(0, worst, 1e-6);
    }

    /**
     * A chain of N cells turns a wave by 2 asin(ωT/2N) a cell (Zobel's constant-k section, from memory): closed by nothing,
     * its reflection is turned by twice that for each, on its image impedance.
     */
    @Test
    void ladderTurnsAWaveAsConstantKSectionsDo() {
        Network network = new Network(List.of(line(0, 0, 75, 10)), new Load.Open());
        int cells = 10;
        double hertz = 30e6;
        double half = Math.PI * hertz * 10 / 2e8 / cells;
        double image = 75 / Math.sqrt(1 - half * half);
        ComplexArray gamma = ReflectionSolver.reflection(
                LadderCells.replace(network, line -> cells), image, Frequencies.ofSweep(hertz));
        double angle = -2 * cells * 2 * Math.asin(half);
        assertEquals(Math.cos(angle), gamma.re(0), 1e-9);
        assertEquals(Math.sin(angle), gamma.im(0), 1e-9);
    }

    @Test
    void portJoinedToGroundStaysThere() {
        Circuit shorted =
                circuit("shorted", 75, new Load.Open(), series(Lumped.resistor(0)), shunt(Lumped.resistor(0)));
        assertArrayEquals(new double[11], ladder(shorted, new RaisedCosineStep(1e-9), 1e-9, 10));
    }

    @Test
    void nothingBeyondABreakCounts() {
        Stimulus step = new RaisedCosineStep(10e-9);
        Circuit broken =
                circuit("broken", 75, new Load.Short(), line(0, 0, 75, 5), new Element.Break(PLAIN), line(0, 0, 75, 5));
        Circuit open = circuit("open", 75, new Load.Open(), line(0, 0, 75, 5));
        assertArrayEquals(ladder(open, step, 1e-9, 500), ladder(broken, step, 1e-9, 500));
    }

    @Test
    void runsOfOneSolverDoNotDependOnEachOther() {
        Circuit circuit = circuits().toList().get(2);
        LadderSolver solver = new LadderSolver(circuit.network(), LadderCells.byDelay(1e-9), 75, 1e-9);
        Stimulus step = new RaisedCosineStep(10e-9);
        double[] first = solver.portVolts(t -> 2 * step.at(t), 300);
        solver.portVolts(t -> 1 - Math.cos(1e8 * t), 77);
        assertArrayEquals(first, solver.portVolts(t -> 2 * step.at(t), 300));
    }

    @Test
    void whatLumpedPartsCannotMakeIsRefused() {
        ConstantsSection skin = new ConstantsSection(0.1, 3e-7, 1e-5, 0, 5e-11, List.of());
        ConstantsSection lossy = new ConstantsSection(0.1, 3e-7, 0, 0, 5e-11, List.of());
        Network leg = new Network(List.of(), new Load.Open());
        for (Network network : List.of(
                new Network(List.of(new Element.Line(skin, 1, PLAIN)), new Load.Open()),
                new Network(List.of(), new Load.Endless(lossy)),
                new Network(List.of(new Element.Divider(75, 0.7, 0.7, leg, PLAIN)), new Load.Open()))) {
            assertThrows(IllegalArgumentException.class, () -> new LadderSolver(network, x -> 5, 75, 1e-9));
        }
        Network good = new Network(List.of(line(0, 0, 75, 5)), new Load.Open());
        assertThrows(IllegalArgumentException.class, () -> new LadderSolver(good, x -> 0, 75, 1e-9));
        assertThrows(IllegalArgumentException.class, () -> new LadderSolver(good, x -> 100_001, 75, 1e-9));
        assertThrows(IllegalArgumentException.class, () -> new LadderSolver(good, x -> 5, 0, 1e-9));
        assertThrows(IllegalArgumentException.class, () -> new LadderSolver(good, x -> 5, 75, 0));
    }

    /** An endless line without loss is its own impedance. */
    @Test
    void endlessLineTakesAllThatComes() {
        Network network = new Network(List.of(), new Load.Endless(ConstantsSection.lossless(75, 0.7)));
        double[] volts = new LadderSolver(network, x -> 1, 75, 1e-9).portVolts(t -> t > 0 ? 2 : 0, 3);
        assertArrayEquals(new double[] {0, 1, 1, 1}, volts, 1e-12);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Lumped.Joined;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.field.LineField;
import cablewright.simulator.field.LinePlaces;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.port.SimulatedPort;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for every cable of passive, reciprocal events, on random cables of up to 200 elements. */
class LawsOfCablesProperties {

    private static final double[] SWEEP = {1e4, 1e6, 2.3e7, 1.1e8, 6e8};
    private static final double OHMS = 75;

    /** Voltage at the far load for an outgoing wave of 1 V: the same from either end (reciprocity). */
    @Property(tries = 60)
    void whatPassesIsTheSameFromEitherEnd(@ForAll("cables") Cable cable) {
        ComplexArray there = passed(cable);
        ComplexArray back = passed(cable.seenFromFarEnd(FarEnd.Terminated.byOhms(OHMS)));
        for (int k = 0; k < there.count(); k++) {
            assertEquals(there.re(k), back.re(k), 1e-9);
            assertEquals(there.im(k), back.im(k), 1e-9);
        }
    }

    private static ComplexArray passed(Cable cable) {
        LineField field = new LineField(cable, OHMS, List.of(new LinePlaces(List.of(), List.of(cable.lengthMetres()))));
        return field.upTo(6e8).at(Frequencies.ofSweep(SWEEP)).volts(0).copy();
    }

    /** Power that comes back and power that arrives are together no more than what was sent. */
    @Property(tries = 60)
    void nothingIsGained(@ForAll("cables") Cable cable) {
        ComplexArray passed = passed(cable);
        ComplexArray back = new SimulatedPort(cable, OHMS).sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            double sum = Math.pow(passed.magnitude(k), 2) + Math.pow(back.magnitude(k), 2);
            assertTrue(sum <= 1 + 1e-9, "sum of powers " + sum);
        }
    }

    /** Real functions of time: Γ(s*) = Γ(s)*. */
    @Property(tries = 60)
    void conjugateFrequencyGivesTheConjugateReflection(@ForAll("cables") Cable cable) {
        Network network = CableCompiler.compile(cable, 1e9);
        double[] c = {1e6, 1e7, 1e8};
        double[] w = {2e6, 3e8, 5e9};
        ComplexArray above = solve(network, new Frequencies(c, w));
        ComplexArray below = solve(network, new Frequencies(c, new double[] {-w[0], -w[1], -w[2]}));
        for (int k = 0; k < c.length; k++) {
            assertEquals(above.re(k), below.re(k), 1e-10);
            assertEquals(above.im(k), -below.im(k), 1e-10);
        }
    }

    private static ComplexArray solve(Network network, Frequencies at) {
        return ReflectionSolver.reflection(network, OHMS, at);
    }

    /** Inside the right half of the plane a passive Γ is smaller than on its border: |Γ| ≤ 1 there too. */
    @Property(tries = 60)
    void reflectionIsBoundedOnTheDampedContour(@ForAll("cables") Cable cable) {
        Network network = CableCompiler.compile(cable, 1e9);
        double[] c = {1e4, 1e6, 1e8, 1e8};
        double[] w = {0, 1e7, 1e9, 6e9};
        ComplexArray gamma = solve(network, new Frequencies(c, w));
        for (int k = 0; k < c.length; k++) {
            assertTrue(gamma.magnitude(k) <= 1 + 1e-12);
        }
    }

    /** Exchange L with C, R with 1/R, series with shunt, open with short, Z with 1/Z: Γ changes its sign. */
    @Property(tries = 60)
    void dualCircuitReflectsTheOpposite(@ForAll("elements") List<Element> elements) {
        Network network = new Network(elements, new Load.Open());
        Network dual =
                new Network(elements.stream().map(LawsOfCablesProperties::dual).toList(), new Load.Short());
        ComplexArray gamma = solve(network, Frequencies.ofSweep(SWEEP));
        ComplexArray other = solve(dual, Frequencies.ofSweep(SWEEP));
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(-gamma.re(k), other.re(k), 1e-8);
            assertEquals(-gamma.im(k), other.im(k), 1e-8);
        }
    }

    private static Element dual(Element element) {
        double squared = OHMS * OHMS;
        if (element instanceof Element.Line line) {
            CrossSection section = line.section();
            double ohms = squared / section.impedanceOhms();
            return new Element.Line(
                    ConstantsSection.lossless(ohms, section.velocityFraction()), line.lengthMetres(), Set.of());
        }
        if (element instanceof Element.Series series) {
            return new Element.Shunt(dual(series.part(), squared), Set.of());
        }
        return new Element.Series(dual(((Element.Shunt) element).part(), squared), Set.of());
    }

    private static Lumped dual(Lumped part, double squared) {
        return new Lumped(
                part.joined() == Joined.SERIES ? Joined.PARALLEL : Joined.SERIES,
                map(part.resistanceOhms(), squared, true),
                map(part.capacitanceFarads(), squared, false),
                part.inductanceHenries().isPresent()
                        ? OptionalDouble.of(part.inductanceHenries().getAsDouble() / squared)
                        : OptionalDouble.empty());
    }

    private static OptionalDouble map(OptionalDouble value, double squared, boolean inverse) {
        if (value.isEmpty()) {
            return value;
        }
        return OptionalDouble.of(inverse ? squared / value.getAsDouble() : squared * value.getAsDouble());
    }

    /** A line of no length is nothing, and so is a part that is a wire in series or nothing across. */
    @Property(tries = 60)
    void whatIsNothingChangesNothing(@ForAll("elements") List<Element> elements) {
        List<Element> more = new ArrayList<>();
        for (Element element : elements) {
            more.add(new Element.Series(Lumped.resistor(0), Set.of()));
            more.add(element);
            more.add(new Element.Line(ConstantsSection.lossless(33, 0.5), 0, Set.of()));
        }
        same(
                solve(new Network(elements, new Load.Open()), Frequencies.ofSweep(SWEEP)),
                solve(new Network(more, new Load.Open()), Frequencies.ofSweep(SWEEP)));
    }

    /** Parts across the line at one place can stand in any order, and so can parts in series. */
    @Property(tries = 60)
    void orderAtOnePlaceDoesNotMatter(@ForAll("parts") List<Lumped> parts) {
        List<Lumped> turned = new ArrayList<>(parts);
        Collections.reverse(turned);
        for (boolean across : new boolean[] {true, false}) {
            same(
                    solve(
                            new Network(atOnePlace(parts, across), new Load.Part(Lumped.resistor(50))),
                            Frequencies.ofSweep(SWEEP)),
                    solve(
                            new Network(atOnePlace(turned, across), new Load.Part(Lumped.resistor(50))),
                            Frequencies.ofSweep(SWEEP)));
        }
    }

    private static List<Element> atOnePlace(List<Lumped> parts, boolean across) {
        List<Element> elements = new ArrayList<>();
        elements.add(new Element.Line(ConstantsSection.lossless(75, 0.8), 3, Set.of()));
        parts.forEach(
                part -> elements.add(across ? new Element.Shunt(part, Set.of()) : new Element.Series(part, Set.of())));
        elements.add(new Element.Line(ConstantsSection.lossless(60, 0.8), 3, Set.of()));
        return elements;
    }

    /** What lies behind a full open or short can't be told. */
    @Property(tries = 40)
    void whatLiesBehindAFullReflectionDoesNotMatter(
            @ForAll("elements") List<Element> front, @ForAll("elements") List<Element> behind) {
        List<Element> all = new ArrayList<>(front);
        all.add(new Element.Break(Set.of()));
        Network cut = new Network(List.copyOf(all), new Load.Open());
        all.addAll(behind);
        same(
                solve(cut, Frequencies.ofSweep(SWEEP)),
                solve(new Network(all, new Load.Short()), Frequencies.ofSweep(SWEEP)));
    }

    /** An endless line is one run of it more, as long as one likes. */
    @Property(tries = 40)
    void endlessLineIsTheSameWithAnotherRunInFront(@ForAll("types") CableType type) {
        Cable bare = TestCables.cable(type, 1, new FarEnd.Endless(type));
        Cable longer = TestCables.cable(type, 1000, new FarEnd.Endless(type));
        same(new SimulatedPort(bare, OHMS).sweep(SWEEP), new SimulatedPort(longer, OHMS).sweep(SWEEP));
    }

    private static void same(ComplexArray a, ComplexArray b) {
        for (int k = 0; k < a.count(); k++) {
            assertEquals(a.re(k), b.re(k), 1e-8);
            assertEquals(a.im(k), b.im(k), 1e-8);
        }
    }

    private static Arbitrary<Double> between(double least, double most) {
        return Arbitraries.integers().between(0, 1000).map(i -> least * Math.pow(most / least, i / 1000.0));
    }

    @Provide
    Arbitrary<CableType> types() {
        return Combinators.combine(between(0.001, 0.5), between(30, 200), between(0.4, 1), between(1e-6, 1e-4))
                .as((r, z, v, k) -> {
                    double slowness = 1 / (v * 299_792_458.0);
                    return TestCables.constants(r, z * slowness, k, 0, slowness / z);
                });
    }

    private static Arbitrary<Lumped> part() {
        Arbitrary<OptionalDouble> r = between(0.5, 1e4).map(OptionalDouble::of);
        Arbitrary<OptionalDouble> l = between(1e-9, 1e-6).map(OptionalDouble::of);
        Arbitrary<OptionalDouble> c = between(1e-13, 1e-10).map(OptionalDouble::of);
        return Combinators.combine(Arbitraries.of(Joined.class), r, l, c).as(Lumped::new);
    }

    @Provide
    Arbitrary<List<Lumped>> parts() {
        return part().list().ofMinSize(2).ofMaxSize(8);
    }

    @Provide
    Arbitrary<List<Element>> elements() {
        Arbitrary<Element> line = Combinators.combine(between(20, 300), between(0.3, 1), between(0.05, 30))
                .as((z, v, l) -> new Element.Line(ConstantsSection.lossless(z, v), l, Set.of()));
        Arbitrary<Element> series = part().map(part -> new Element.Series(part, Set.of()));
        Arbitrary<Element> shunt = part().map(part -> new Element.Shunt(part, Set.of()));
        return Arbitraries.oneOf(List.of(line, series, shunt))
                .list()
                .ofMinSize(1)
                .ofMaxSize(200);
    }

    @Provide
    Arbitrary<Cable> cables() {
        Arbitrary<List<Run>> runs = Combinators.combine(types(), between(1, 60))
                .as(Run::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(20);
        Arbitrary<Integer> places = Arbitraries.integers().between(1, 990);
        Arbitrary<List<Integer>> where = places.list().ofMaxSize(100);
        return Combinators.combine(
                        runs, where, part(), types(), Arbitraries.integers().between(0, 1000))
                .as((list, at, part, branchType, mix) -> {
                    double length = list.stream().mapToDouble(Run::lengthMetres).sum();
                    List<Event> events = new ArrayList<>();
                    for (int i = 0; i < at.size(); i++) {
                        events.add(event("e" + i, length * at.get(i) / 1000, length, part, branchType, mix + i));
                    }
                    return new Cable("Random cable", list, events, FarEnd.Terminated.byOhms(OHMS));
                });
    }

    private static Event event(String id, double metres, double length, Lumped part, CableType branch, int mix) {
        switch (mix % 5) {
            case 0:
                return new SeriesPart(id, metres, part);
            case 1:
                return new ShuntPart(id, metres, part);
            case 2:
                return new Tap(id, metres, OHMS, 1, 1e-12, 1e6);
            case 3:
                return new GradualDamage(id, metres * 0.9, 0.05 * length, 0.9, Profile.FLAT);
            default:
                return new BridgedTap(id, metres, TestCables.cable(branch, 7, new FarEnd.Open()));
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.DebyeTerm;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.Waveform;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.apache.commons.math3.complex.Complex;

/** What holds for every passive line, on random circuits of up to 200 elements. */
class LawsOfLinesProperties {

    private static final double[] SWEEP = {1e3, 1e5, 1e6, 7.7e6, 3.3e7, 1.01e8, 4.7e8, 1e9};

    private static ComplexArray solve(Network network, double ohms, double... hertz) {
        return ReflectionSolver.reflection(network, ohms, Frequencies.ofSweep(hertz));
    }

    @Property(tries = 200)
    void nothingComesBackStrongerThanItWent(@ForAll("circuits") Network network) {
        ComplexArray gamma = solve(network, 75, SWEEP);
        for (int k = 0; k < gamma.count(); k++) {
            assertTrue(gamma.magnitude(k) <= 1 + 1e-12, "|Γ| = " + gamma.magnitude(k));
        }
    }

    @Property(tries = 100)
    void circuitWithoutLossSendsEverythingBack(@ForAll("losslessCircuits") Network network) {
        ComplexArray gamma = solve(network, 75, SWEEP);
        for (int k = 0; k < gamma.count(); k++) {
            assertEquals(1, gamma.magnitude(k), 1e-9);
        }
    }

    @Property(tries = 100)
    void cuttingEveryLineInTwoChangesNothing(@ForAll("circuits") Network network) {
        List<Element> cut = new ArrayList<>();
        for (Element element : network.elements()) {
            if (element instanceof Element.Line line) {
                cut.add(new Element.Line(line.section(), line.lengthMetres() * 0.375, line.madeBy()));
                cut.add(new Element.Line(line.section(), line.lengthMetres() * 0.625, line.madeBy()));
            } else {
                cut.add(element);
            }
        }
        same(solve(network, 75, SWEEP), solve(new Network(cut, network.load()), 75, SWEEP), 1e-9);
    }

    /** For a reciprocal circuit, what passes from one end to the other is the same both ways: det of its chain matrix is 1. */
    @Property(tries = 100)
    void mirroredLosslessCircuitReflectsAsMuch(@ForAll("losslessCircuits") Network network) {
        Network through = new Network(network.elements(), new Load.Part(Lumped.resistor(75)));
        List<Element> turned = new ArrayList<>(network.elements());
        Collections.reverse(turned);
        Network back = new Network(turned, new Load.Part(Lumped.resistor(75)));
        ComplexArray a = solve(through, 75, SWEEP);
        ComplexArray b = solve(back, 75, SWEEP);
        for (int k = 0; k < a.count(); k++) {
            assertEquals(a.magnitude(k), b.magnitude(k), 1e-8);
        }
    }

    @Property(tries = 100)
    void lengthAndTimeScaleTogether(@ForAll("losslessCircuits") Network network) {
        double factor = 3;
        List<Element> longer = new ArrayList<>();
        for (Element element : network.elements()) {
            longer.add(stretched(element, factor));
        }
        ComplexArray a = solve(network, 75, 1e6, 2.5e7, 1.1e8);
        ComplexArray b = solve(new Network(longer, network.load()), 75, 1e6 / factor, 2.5e7 / factor, 1.1e8 / factor);
        same(a, b, 1e-8);
    }

    private static Element stretched(Element element, double factor) {
        if (element instanceof Element.Line line) {
            return new Element.Line(line.section(), line.lengthMetres() * factor, line.madeBy());
        }
        if (element instanceof Element.Series series) {
            return new Element.Series(slower(series.part(), factor), Set.of());
        }
        return new Element.Shunt(slower(((Element.Shunt) element).part(), factor), Set.of());
    }

    private static Lumped slower(Lumped part, double factor) {
        return new Lumped(
                part.joined(),
                part.resistanceOhms(),
                times(part.inductanceHenries(), factor),
                times(part.capacitanceFarads(), factor));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    @Property(tries = 100)
    void impedanceScalesOutOfTheReflection(@ForAll("losslessCircuits") Network network) {
        // Γ on another source is the bilinear image of Γ on the first.
        ComplexArray on75 = solve(network, 75, SWEEP);
        ComplexArray on50 = solve(network, 50, SWEEP);
        double r = (75.0 - 50) / (75 + 50);
        for (int k = 0; k < on75.count(); k++) {
            Complex g = new Complex(on75.re(k), on75.im(k));
            Complex image = g.add(r).divide(g.multiply(r).add(1));
            assertEquals(image.getReal(), on50.re(k), 1e-9);
            assertEquals(image.getImaginary(), on50.im(k), 1e-9);
        }
    }

    @Property(tries = 50)
    void lossyLineFarFromItsEndHidesTheEnd(@ForAll("sections") CrossSection section) {
        Network open = new Network(List.of(new Element.Line(section, 1e7, Set.of())), new Load.Open());
        Network shorted = new Network(List.of(new Element.Line(section, 1e7, Set.of())), new Load.Short());
        same(solve(open, 75, 1e9), solve(shorted, 75, 1e9), 1e-9);
    }

    @Property(tries = 40)
    void nothingComesBackBeforeTheTravelTime(@ForAll("circuits") Network network) {
        double metres = 30;
        CrossSection front = ConstantsSection.lossless(75, 0.8);
        List<Element> elements = new ArrayList<>();
        elements.add(new Element.Line(front, metres, Set.of()));
        elements.addAll(network.elements());
        Waveform wave = reflectedOf(new Network(elements, network.load()));
        double arrival = 2 * metres / (0.8 * 299_792_458.0);
        for (int i = 0; wave.time(i) < arrival; i++) {
            assertTrue(Math.abs(wave.sample(i)) < 1e-8, "early by " + (arrival - wave.time(i)) + ": " + wave.sample(i));
        }
    }

    @Property(tries = 40)
    void lessEnergyComesBackThanWentOut(@ForAll("circuits") Network network) {
        Waveform wave = reflectedOf(network);
        GaussianPulse pulse = new GaussianPulse(4e-9);
        double back = 0;
        double out = 0;
        for (int i = 0; i < wave.count(); i++) {
            back += wave.sample(i) * wave.sample(i);
            out += pulse.at(wave.time(i)) * pulse.at(wave.time(i));
        }
        assertTrue(back <= out * (1 + 1e-6), back + " came back of " + out);
    }

    private static Waveform reflectedOf(Network network) {
        PortResponse port = new PortResponse() {
            @Override
            public double referenceOhms() {
                return 75;
            }

            @Override
            public Optional<ContourGrid> nativeGrid() {
                return Optional.empty();
            }

            @Override
            public ComplexArray reflection(ContourGrid grid, int count) {
                return ReflectionSolver.reflection(network, 75, grid.points().slice(0, count));
            }
        };
        return PortVoltage.of(port, new GaussianPulse(4e-9), 2e-6, 20).reflected();
    }

    /** Far below the lowest resonance a line is its resistance and its load: R l + RL for constants without leakage. */
    @Property(tries = 50)
    void atLowFrequencyALineIsItsResistance(@ForAll("sections") CrossSection section) {
        ConstantsSection constants = (ConstantsSection) section;
        ConstantsSection dry = new ConstantsSection(
                constants.resistanceOhmsPerMetre(),
                constants.inductanceHenriesPerMetre(),
                0,
                0,
                constants.capacitanceFaradsPerMetre(),
                List.of());
        Network network =
                new Network(List.of(new Element.Line(dry, 10, Set.of())), new Load.Part(Lumped.resistor(100)));
        ComplexArray gamma = solve(network, 75, 0.01);
        double z = 100 + 10 * dry.resistanceOhmsPerMetre();
        assertEquals((z - 75) / (z + 75), gamma.re(0), 1e-8);
    }

    private static void same(ComplexArray a, ComplexArray b, double tolerance) {
        for (int k = 0; k < a.count(); k++) {
            assertEquals(a.re(k), b.re(k), tolerance);
            assertEquals(a.im(k), b.im(k), tolerance);
        }
    }

    /** Values spread evenly over their logarithm. */
    private static Arbitrary<Double> between(double least, double most) {
        return Arbitraries.integers().between(0, 1000).map(i -> least * Math.pow(most / least, i / 1000.0));
    }

    @Provide
    Arbitrary<CrossSection> sections() {
        Arbitrary<Double> r = between(0.001, 1);
        Arbitrary<Double> z = between(20, 300);
        Arbitrary<Double> velocity = between(0.3, 1);
        Arbitrary<Double> skin = between(1e-6, 1e-4);
        Arbitrary<Double> leak = between(1e-9, 1e-4);
        Arbitrary<Boolean> relaxing = Arbitraries.of(true, false);
        return Combinators.combine(r, z, velocity, skin, leak, relaxing).as((ohms, impedance, v, k, g, debye) -> {
            double slowness = 1 / (v * 299_792_458.0);
            List<DebyeTerm> terms =
                    debye ? List.of(new DebyeTerm(0.1 * slowness / impedance, 1e-9)) : List.<DebyeTerm>of();
            return new ConstantsSection(ohms, impedance * slowness, k, g, slowness / impedance, terms);
        });
    }

    private static Arbitrary<Lumped> parts(boolean lossy) {
        Arbitrary<OptionalDouble> r =
                lossy ? between(0.1, 1e4).map(OptionalDouble::of) : Arbitraries.just(OptionalDouble.empty());
        Arbitrary<OptionalDouble> l = between(1e-9, 1e-6).map(OptionalDouble::of);
        Arbitrary<OptionalDouble> c = between(1e-13, 1e-10).map(OptionalDouble::of);
        Arbitrary<Lumped.Joined> joined = Arbitraries.of(Lumped.Joined.class);
        return Combinators.combine(joined, r, l, c, Arbitraries.integers().between(0, 2))
                .as((how, ohms, henries, farads, leaveOut) -> new Lumped(
                        how,
                        ohms,
                        leaveOut == 0 ? OptionalDouble.empty() : henries,
                        leaveOut == 1 ? OptionalDouble.empty() : farads));
    }

    private Arbitrary<Element> lines(boolean lossy) {
        Arbitrary<Double> length = between(0.01, 40);
        Arbitrary<CrossSection> section = lossy
                ? sections()
                : Combinators.combine(between(20, 300), between(0.3, 1))
                        .as((z, v) -> (CrossSection) ConstantsSection.lossless(z, v));
        return Combinators.combine(section, length).as((s, l) -> new Element.Line(s, l, Set.of()));
    }

    private Arbitrary<Element> elements(boolean lossy) {
        Arbitrary<Element> series = parts(lossy).map(part -> new Element.Series(part, Set.of()));
        Arbitrary<Element> shunt = parts(lossy).map(part -> new Element.Shunt(part, Set.of()));
        return Arbitraries.oneOf(List.of(lines(lossy), series, shunt));
    }

    @Provide
    Arbitrary<Network> circuits() {
        Arbitrary<Load> loads = Arbitraries.oneOf(List.of(
                Arbitraries.just((Load) new Load.Open()),
                Arbitraries.just((Load) new Load.Short()),
                parts(true).map(part -> (Load) new Load.Part(part)),
                sections().map(section -> (Load) new Load.Endless(section))));
        Arbitrary<Element> branch = Combinators.combine(elements(true).list().ofMaxSize(5), loads)
                .as((list, load) -> new Element.Branch(new Network(list, load), Set.of()));
        Arbitrary<Element> any = Arbitraries.frequencyOf(Tuple.of(9, elements(true)), Tuple.of(1, branch));
        return Combinators.combine(any.list().ofMinSize(1).ofMaxSize(200), loads)
                .as(Network::new);
    }

    @Provide
    Arbitrary<Network> losslessCircuits() {
        return Combinators.combine(
                        elements(false).list().ofMinSize(1).ofMaxSize(200),
                        Arbitraries.of(new Load.Open(), new Load.Short()))
                .as((list, load) -> new Network(list, load));
    }
}

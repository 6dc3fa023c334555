// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.referee;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Lumped.Joined;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.DebyeTerm;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.ReflectionSolver;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A circuit and its reference solution, as written by src/test/python/referee.py. */
final class RefereeCircuit implements PortResponse {

    private static final Set<String> NOBODY = Set.of();

    private Network network;
    private double sourceOhms;
    private Stimulus stimulus;
    private final List<double[]> gamma = new ArrayList<>();
    private double recordSeconds;
    private double[] volts;

    static RefereeCircuit read(String name) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                RefereeCircuit.class.getResourceAsStream(name + ".txt"), StandardCharsets.UTF_8))) {
            Deque<String> lines = reader.lines()
                    .map(String::strip)
                    .filter(line -> !line.startsWith("#"))
                    .collect(Collectors.toCollection(ArrayDeque::new));
            return new RefereeCircuit(lines);
        }
    }

    private RefereeCircuit(Deque<String> lines) {
        sourceOhms = numbers(lines.remove())[0];
        String[] sent = lines.remove().split(" ");
        stimulus = stimulus(sent[1], Double.parseDouble(sent[2]));
        network = network(lines);
        while (lines.peek().startsWith("gamma")) {
            gamma.add(numbers(lines.remove()));
        }
        double[] record = numbers(lines.remove());
        recordSeconds = record[1];
        volts = lines.stream().mapToDouble(Double::parseDouble).toArray();
        if (volts.length != (int) record[0]) {
            throw new IllegalStateException("file has " + volts.length + " voltages and says " + (int) record[0]);
        }
    }

    Stimulus stimulus() {
        return stimulus;
    }

    Network network() {
        return network;
    }

    double recordSeconds() {
        return recordSeconds;
    }

    /** Rows of frequency [Hz], real and imaginary part. */
    List<double[]> gamma() {
        return gamma;
    }

    double[] volts() {
        return volts;
    }

    private static Stimulus stimulus(String kind, double width) {
        switch (kind) {
            case "half-sine":
                return new HalfSine(width);
            case "gaussian-pulse":
                return new GaussianPulse(width);
            case "gaussian-step":
                return new GaussianStep(width);
            default:
                return new RaisedCosineStep(width);
        }
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.split(" "))
                .skip(1)
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static Network network(Deque<String> lines) {
        List<Element> elements = new ArrayList<>();
        while (!lines.peek().startsWith("load")) {
            String line = lines.remove();
            String[] words = line.split(" ");
            if (words[0].equals("line")) {
                elements.add(new Element.Line(section(words, 2), Double.parseDouble(words[1]), NOBODY));
            } else if (words[0].equals("series")) {
                elements.add(new Element.Series(part(words, 1), NOBODY));
            } else if (words[0].equals("shunt")) {
                elements.add(new Element.Shunt(part(words, 1), NOBODY));
            } else {
                elements.add(new Element.Branch(network(lines), NOBODY));
                lines.remove();
            }
        }
        return new Network(elements, load(lines.remove().split(" ")));
    }

    private static Load load(String[] words) {
        switch (words[1]) {
            case "open":
                return new Load.Open();
            case "short":
                return new Load.Short();
            case "endless":
                return new Load.Endless(section(words, 2));
            default:
                return new Load.Part(part(words, 2));
        }
    }

    private static ConstantsSection section(String[] words, int from) {
        double[] x = Arrays.stream(words, from, from + 5)
                .mapToDouble(Double::parseDouble)
                .toArray();
        List<DebyeTerm> terms = new ArrayList<>();
        for (int i = from + 5; i < words.length; i += 3) {
            terms.add(new DebyeTerm(Double.parseDouble(words[i + 1]), Double.parseDouble(words[i + 2])));
        }
        return new ConstantsSection(x[0], x[1], x[2], x[3], x[4], terms);
    }

    private static Lumped part(String[] words, int from) {
        Map<String, OptionalDouble> values = new TreeMap<>();
        for (int i = from + 1; i < words.length; i += 2) {
            values.put(words[i], OptionalDouble.of(Double.parseDouble(words[i + 1])));
        }
        OptionalDouble none = OptionalDouble.empty();
        return new Lumped(
                words[from].equals("series") ? Joined.SERIES : Joined.PARALLEL,
                values.getOrDefault("r", none),
                values.getOrDefault("l", none),
                values.getOrDefault("c", none));
    }

    ComplexArray reflection(Frequencies frequencies) {
        return ReflectionSolver.reflection(network, sourceOhms, frequencies);
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
        return reflection(grid.points().slice(0, count));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.ladder;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Lumped.Joined;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.LineConstants;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * Replaces lines by ladders. A line of length l becomes N equal cells, each a π of R l/N and L l/N in series between two
 * halves of G l/N and C l/N.
 *
 * <p>A cell turns a wave by 2 asin(ωT/2N) where the line turns it by ωT/N, with T the line's delay: late by a share of
 * (ωT/2N)²/6, so an error that falls with 1/N², and nothing passes above f = N/(πT) (O. J. Zobel's constant-k section, from
 * memory).
 */
public final class LadderCells {

    /** Most cells that stand for one line. */
    public static final int MOST_CELLS = 100_000;

    /** A resistor of more than 1e12 ohm is none. */
    private static final double NO_LEAK_SIEMENS = 1e-12;

    private LadderCells() {}

    /**
     * Counts cells by delay.
     *
     * @param secondsPerCell longest delay of one cell [s], above 0
     * @return how many cells each line gets, at least 1
     */
    public static ToIntFunction<Element.Line> byDelay(double secondsPerCell) {
        return line -> {
            double delay = LineConstants.near(line.section()).secondsPerMetre() * line.lengthMetres();
            return (int) Math.max(1, Math.min(MOST_CELLS + 1.0, Math.ceil(delay / secondsPerCell - 1e-9)));
        };
    }

    /**
     * Replaces every line of a circuit, those of its branches included.
     *
     * @param network the circuit
     * @param cells how many cells each line gets
     * @return a circuit of lumped parts
     * @throws IllegalArgumentException if a line is more than four constants, is an endless one with loss, or gets no cell or
     *     too many, or the circuit has an ideal divider
     */
    public static Network replace(Network network, ToIntFunction<Element.Line> cells) {
        List<Element> elements = new ArrayList<>();
        for (Element element : network.elements()) {
            if (element instanceof Element.Line line) {
                elements.addAll(ladder(line, cells.applyAsInt(line)));
            } else if (element instanceof Element.Branch branch) {
                elements.add(new Element.Branch(replace(branch.branch(), cells), branch.madeBy()));
            } else if (element instanceof Element.Divider) {
                throw new IllegalArgumentException(
                        "the circuit has an ideal divider, which no lumped parts make; leave the splitter out");
            } else {
                elements.add(element);
            }
        }
        return new Network(elements, load(network.load()));
    }

    /**
     * Replaces every line of a circuit, those of its branches included, by the four constants nearest to it.
     *
     * @param network the circuit
     * @return a circuit whose lines a ladder can stand for; an endless end is a resistor
     */
    public static Network byConstants(Network network) {
        List<Element> elements = new ArrayList<>();
        for (Element element : network.elements()) {
            if (element instanceof Element.Line line) {
                elements.add(new Element.Line(near(line.section()), line.lengthMetres(), line.madeBy()));
            } else if (element instanceof Element.Branch branch) {
                elements.add(new Element.Branch(byConstants(branch.branch()), branch.madeBy()));
            } else {
                elements.add(element);
            }
        }
        Load end = network.load() instanceof Load.Endless endless
                ? new Load.Part(
                        Lumped.resistor(LineConstants.near(endless.section()).impedanceOhms()))
                : network.load();
        return new Network(elements, end);
    }

    private static CrossSection near(CrossSection section) {
        LineConstants line = LineConstants.near(section);
        return new ConstantsSection(
                line.resistanceOhmsPerMetre(),
                line.inductanceHenriesPerMetre(),
                0,
                line.conductanceSiemensPerMetre(),
                line.capacitanceFaradsPerMetre(),
                List.of());
    }

    private static Load load(Load load) {
        if (!(load instanceof Load.Endless)) {
            return load;
        }
        LineConstants line = constants(new Element.Line(((Load.Endless) load).section(), 1, Set.of()));
        if (!line.isLossless()) {
            throw new IllegalArgumentException(
                    "the circuit ends in an endless line with loss, which no lumped parts make;"
                            + " end it in a resistor or a long line");
        }
        return new Load.Part(Lumped.resistor(line.impedanceOhms()));
    }

    private static LineConstants constants(Element.Line line) {
        return LineConstants.exactly(line.section())
                .orElseThrow(() -> new IllegalArgumentException("a line of " + line.lengthMetres()
                        + " m needs more than R, L, G and C, which a ladder cannot represent; use a line by constants"
                        + " without skin effect or relaxations"));
    }

    /**
     * Makes the ladder that stands for a line.
     *
     * @param line the line
     * @param cells how many cells, 1 to {@value #MOST_CELLS}
     * @return series and shunt elements in order, made by the line's own makers
     */
    public static List<Element> ladder(Element.Line line, int cells) {
        if (cells < 1 || cells > MOST_CELLS) {
            throw new IllegalArgumentException("cells is " + cells + "; allowed is 1 to " + MOST_CELLS);
        }
        LineConstants constants = constants(line);
        double metres = line.lengthMetres() / cells;
        double r = constants.resistanceOhmsPerMetre() * metres;
        OptionalDouble resistance = r > 0 ? OptionalDouble.of(r) : OptionalDouble.empty();
        Element series = new Element.Series(
                new Lumped(
                        Joined.SERIES,
                        resistance,
                        OptionalDouble.of(constants.inductanceHenriesPerMetre() * metres),
                        OptionalDouble.empty()),
                line.madeBy());
        Element half = shunt(constants, metres / 2, line);
        Element whole = shunt(constants, metres, line);
        List<Element> ladder = new ArrayList<>();
        ladder.add(half);
        for (int i = 1; i <= cells; i++) {
            ladder.add(series);
            ladder.add(i < cells ? whole : half);
        }
        return ladder;
    }

    private static Element shunt(LineConstants constants, double metres, Element.Line line) {
        double g = constants.conductanceSiemensPerMetre() * metres;
        return new Element.Shunt(
                new Lumped(
                        Joined.PARALLEL,
                        g > NO_LEAK_SIEMENS ? OptionalDouble.of(1 / g) : OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(constants.capacitanceFaradsPerMetre() * metres)),
                line.madeBy());
    }
}

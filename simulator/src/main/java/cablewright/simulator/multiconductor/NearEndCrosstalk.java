// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.ReflectionSolver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The near ends of a split pair and of its neighbour as two ports: port 1 the tested pair, port 2 the neighbour, each on a
 * resistance that takes the place of what it is left in. S21 and S12 are near-end crosstalk, found from either side by a
 * solution of its own: the neighbour's circuit meets the same stretch with the tested pair for a neighbour.
 */
public final class NearEndCrosstalk {

    private final Cable cable;
    private final String splitId;
    private final double testedOhms;
    private final double neighbourOhms;

    /**
     * Takes a split.
     *
     * @param cable the cable
     * @param splitId name of a split that is put right
     * @param testedOhms reference of port 1 [Ω], 0.1 to 1e5
     * @param neighbourOhms reference of port 2 [Ω], 0.1 to 1e5
     * @throws IllegalArgumentException if there is no such split
     */
    public NearEndCrosstalk(Cable cable, String splitId, double testedOhms, double neighbourOhms) {
        for (double ohms : new double[] {testedOhms, neighbourOhms}) {
            PortResponse.requireSource("ohms", ohms);
        }
        if (!(cable.event(splitId).orElse(null) instanceof Split split)) {
            throw new IllegalArgumentException("cable \"" + cable.title() + "\" has no split \"" + splitId
                    + "\"; crosstalk is heard of one of its splits");
        }
        if (!split.putRight()) {
            throw new IllegalArgumentException(
                    "split \"" + splitId + "\" is never put right, so both pairs end in one load;"
                            + " two ports take one that is put right");
        }
        this.cable = cable;
        this.splitId = splitId;
        this.testedOhms = testedOhms;
        this.neighbourOhms = neighbourOhms;
    }

    /**
     * Sweeps in frequency.
     *
     * @param hertz frequencies [Hz], above 0
     * @return S11, S12, S21, S22
     * @throws IllegalArgumentException if something is put in the line within the split, or a splitter before it
     */
    public List<ComplexArray> sweep(double... hertz) {
        double top = 0;
        for (double f : hertz) {
            top = Math.max(top, f);
        }
        Network whole = CableCompiler.compile(cable, top);
        int at = 0;
        while (!isSplit(whole.elements().get(at))) {
            at++;
        }
        Element.Split split = (Element.Split) whole.elements().get(at);
        for (Element inside : split.inside()) {
            if (!(inside instanceof Element.Line)) {
                throw new IllegalArgumentException(
                        "event \"" + inside.madeBy().iterator().next() + "\" is put in the line within split \""
                                + splitId + "\"; two ports take a split of plain cable");
            }
        }
        Network tested = asTested(whole, at, split);
        Network neighbour = asNeighbour(whole, at, split);
        Frequencies frequencies = Frequencies.ofSweep(hertz);
        double scale = Math.sqrt(testedOhms / neighbourOhms);
        return List.of(
                ReflectionSolver.reflection(tested, testedOhms, frequencies),
                scaled(NeighbourPort.heard(neighbour, splitId, neighbourOhms, frequencies), 1 / scale),
                scaled(NeighbourPort.heard(tested, splitId, testedOhms, frequencies), scale),
                ReflectionSolver.reflection(neighbour, neighbourOhms, frequencies));
    }

    private boolean isSplit(Element element) {
        return element instanceof Element.Split && element.madeBy().contains(splitId);
    }

    /** The circuit with the neighbour's near end on its reference. */
    private Network asTested(Network whole, int at, Element.Split split) {
        Load end = new Load.Part(Lumped.resistor(neighbourOhms));
        Network near = new Network(split.neighbourNear().elements(), end);
        List<Element> elements = new ArrayList<>(whole.elements());
        elements.set(at, new Element.Split(split.inside(), split.shape(), near, split.neighbourFar(), split.madeBy()));
        return new Network(elements, whole.load());
    }

    /** The neighbour's own circuit, which has the tested pair for a neighbour. */
    private Network asNeighbour(Network whole, int at, Element.Split split) {
        List<Element> back = new ArrayList<>();
        for (Element element : whole.elements().subList(0, at)) {
            if (element instanceof Element.Divider) {
                throw new IllegalArgumentException(
                        "a splitter stands before split \"" + splitId + "\"; two ports take a line without one");
            }
            back.add(element instanceof Element.Split s ? s.turned() : element);
        }
        Collections.reverse(back);
        Network near = new Network(back, new Load.Part(Lumped.resistor(testedOhms)));
        Network far =
                new Network(whole.elements().subList(at + 1, whole.elements().size()), whole.load());
        List<Element> elements = new ArrayList<>(split.neighbourNear().elements());
        Collections.reverse(elements);
        elements.add(new Element.Split(split.inside(), split.shape(), near, Optional.of(far), Set.of(splitId)));
        Network onward = split.neighbourFar().orElseThrow();
        elements.addAll(onward.elements());
        return new Network(elements, onward.load());
    }

    private static ComplexArray scaled(ComplexArray values, double factor) {
        double[] re = values.copyOfReal();
        double[] im = values.copyOfImaginary();
        for (int k = 0; k < re.length; k++) {
            re[k] *= factor;
            im[k] *= factor;
        }
        return ComplexArray.takingOver(re, im);
    }
}

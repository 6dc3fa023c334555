// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.BlockWorkspace;
import cablewright.simulator.solve.EvenOddSection;
import cablewright.simulator.solve.ForwardWave;
import cablewright.simulator.solve.Probe;
import cablewright.simulator.solve.ProbeFilter;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Near-end crosstalk: what a split makes the neighbour hear while the tested pair is driven. The response is the voltage
 * across the neighbour's near end over the outgoing wave of the source, and it takes the instrument like any other; nothing
 * of the outgoing wave itself is in it.
 */
public final class NeighbourPort implements PortResponse {

    private static final int SAMPLES_PER_EDGE = 12;

    private final Cable cable;
    private final double referenceOhms;
    private final String splitId;

    /**
     * Listens to the neighbour of a split.
     *
     * @param cable the cable
     * @param referenceOhms resistance of the source that drives the tested pair [Ω], 0.1 to 1e5
     * @param splitId name of the split
     * @throws IllegalArgumentException if there is no split of that name, or the neighbour's near end is shorted
     */
    public NeighbourPort(Cable cable, double referenceOhms, String splitId) {
        PortResponse.requireSource("referenceOhms", referenceOhms);
        Event event = cable.event(splitId)
                .orElseThrow(() -> new IllegalArgumentException("cable \"" + cable.title() + "\" has no event \""
                        + splitId + "\"; crosstalk is heard of one of its splits"));
        if (!(event instanceof Split)) {
            throw new IllegalArgumentException("event \"" + splitId + "\" is no split but a "
                    + event.kind().id() + "; only a split has a neighbour that hears");
        }
        if (((Split) event).neighbourNearEnd() == NeighbourEnd.SHORT) {
            throw new IllegalArgumentException("neighbourNearEnd of \"" + splitId
                    + "\" is SHORT; across a short nothing is heard: choose MATCHED or OPEN");
        }
        this.cable = cable;
        this.referenceOhms = referenceOhms;
        this.splitId = splitId;
    }

    @Override
    public double referenceOhms() {
        return referenceOhms;
    }

    @Override
    public Optional<ContourGrid> nativeGrid() {
        return Optional.empty();
    }

    @Override
    public ComplexArray reflection(ContourGrid grid, int count) {
        return reflection(grid, count, SAMPLES_PER_EDGE * grid.sampleSeconds());
    }

    @Override
    public ComplexArray reflection(ContourGrid grid, int count, double edgeSeconds) {
        Network network = CableCompiler.compile(cable, ProfileSteps.forEdge(edgeSeconds));
        return heard(network, splitId, referenceOhms, grid.points().slice(0, count));
    }

    /**
     * Returns the crosstalk of a sweep.
     *
     * @param hertz frequencies [Hz], above 0
     * @return voltage across the neighbour's near end over the outgoing wave, at s = j2πf
     */
    public ComplexArray sweep(double... hertz) {
        double top = 0;
        for (double f : hertz) {
            top = Math.max(top, f);
        }
        return heard(CableCompiler.compile(cable, top), splitId, referenceOhms, Frequencies.ofSweep(hertz));
    }

    /** What is across the neighbour's near end while a circuit is driven from a resistive source, over the outgoing wave. */
    static ComplexArray heard(Network network, String splitId, double sourceOhms, Frequencies frequencies) {
        int n = frequencies.count();
        double[] re = new double[n];
        double[] im = new double[n];
        IntStream.range(0, (n + ComplexBlock.LENGTH - 1) / ComplexBlock.LENGTH)
                .parallel()
                .forEach(i -> {
                    int from = i * ComplexBlock.LENGTH;
                    Frequencies some = frequencies.slice(from, Math.min(n, from + ComplexBlock.LENGTH));
                    ComplexBlock part = heardAt(network, splitId, sourceOhms, some);
                    System.arraycopy(part.real(), 0, re, from, part.count());
                    System.arraycopy(part.imaginary(), 0, im, from, part.count());
                });
        return ComplexArray.takingOver(re, im);
    }

    private static ComplexBlock heardAt(Network network, String splitId, double sourceOhms, Frequencies frequencies) {
        BlockWorkspace workspace = BlockWorkspace.of(frequencies);
        ForwardWave wave = ForwardWave.through(network, sourceOhms, workspace, new AtSplit(network, splitId));
        wave.onto(sourceOhms);
        ComplexBlock forward = new ComplexBlock(workspace.count()).fill(1);
        for (Probe probe : wave.probes()) {
            forward.times(probe.arrival());
            if (probe instanceof Probe.AtSplit at) {
                at.field().multiplyHeard(forward);
                toNearEnd((Element.Split) network.elements().get(at.element()), sourceOhms, workspace, forward);
                return forward;
            }
        }
        throw new IllegalStateException("the circuit has no stretch of split \"" + splitId + "\"");
    }

    /** From the split along the neighbour to what is across its near end. */
    private static void toNearEnd(Element.Split split, double ohms, BlockWorkspace workspace, ComplexBlock forward) {
        ForwardWave back = ForwardWave.through(split.neighbourNear(), ohms, workspace, AtEnd.ONLY);
        back.onto(EvenOddSection.first(split).section());
        for (Probe probe : back.probes()) {
            forward.times(probe.arrival());
            if (probe instanceof Probe.AtEnd end) {
                forward.times(end.onward());
            }
        }
    }

    /** Wants the stretch of the split and nothing else. */
    private static final class AtSplit implements ProbeFilter {
        private final Network network;
        private final String splitId;

        AtSplit(Network network, String splitId) {
            this.network = network;
            this.splitId = splitId;
        }

        @Override
        public boolean onLine(int element) {
            Element one = network.elements().get(element);
            return one instanceof Element.Split && one.madeBy().contains(splitId);
        }

        @Override
        public ProbeFilter onBranch(int element) {
            return null;
        }
    }

    /** Wants the voltage at the end and nothing else. */
    private enum AtEnd implements ProbeFilter {
        ONLY;

        @Override
        public boolean onLine(int element) {
            return false;
        }

        @Override
        public ProbeFilter onBranch(int element) {
            return this;
        }

        @Override
        public boolean atEnd() {
            return true;
        }
    }
}

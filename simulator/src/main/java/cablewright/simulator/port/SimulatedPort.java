// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.port;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.solve.ReflectionSolver;
import java.util.Optional;

/** The port of a simulated cable, at its near end. For the other end, make one of {@code cable.seenFromFarEnd()}. */
public final class SimulatedPort implements PortResponse {

    private static final int USUAL_SAMPLES_PER_EDGE = 12;

    private final Cable cable;
    private final double referenceOhms;
    private final PropagationCache memory;

    /**
     * Makes a port that shares nothing.
     *
     * @param cable the cable
     * @param referenceOhms resistance of the source [Ω], 0.1 to 1e5
     */
    public SimulatedPort(Cable cable, double referenceOhms) {
        this(cable, referenceOhms, new PropagationCache());
    }

    /**
     * Makes a port that remembers what lines do, together with others.
     *
     * @param cable the cable
     * @param referenceOhms resistance of the source [Ω], 0.1 to 1e5
     * @param memory what is remembered
     */
    public SimulatedPort(Cable cable, double referenceOhms, PropagationCache memory) {
        PortResponse.requireSource("referenceOhms", referenceOhms);
        this.cable = cable;
        this.referenceOhms = referenceOhms;
        this.memory = memory;
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
        return reflection(grid, count, USUAL_SAMPLES_PER_EDGE * grid.sampleSeconds());
    }

    @Override
    public ComplexArray reflection(ContourGrid grid, int count, double edgeSeconds) {
        Network network = CableCompiler.compile(cable, ProfileSteps.forEdge(edgeSeconds));
        return memory.reflection(network, referenceOhms, grid, count);
    }

    /**
     * Returns the reflection coefficient of a sweep.
     *
     * @param hertz frequencies [Hz], above 0
     * @return Γ at s = j2πf
     */
    public ComplexArray sweep(double... hertz) {
        double top = 0;
        for (double f : hertz) {
            top = Math.max(top, f);
        }
        Network network = CableCompiler.compile(cable, top);
        return ReflectionSolver.reflection(network, referenceOhms, Frequencies.ofSweep(hertz));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import java.util.Optional;

/**
 * One circuit of a coupled network, driven at its near end, and what comes of it: what it reflects, what its neighbours hear
 * at the near end and at the far one, and what arrives. Each is a response that the instrument takes like any other. The last
 * grid is remembered, so all of them cost one solution. Safe for use by several threads.
 */
public final class CoupledPort {

    private final CoupledNetwork network;
    private final int driven;
    private ContourGrid grid;
    private int count;
    private CoupledSolver.Voltages voltages;

    /**
     * Takes a circuit.
     *
     * @param network the network
     * @param driven which of its near ends is driven, from 0; its resistance is the source's
     */
    public CoupledPort(CoupledNetwork network, int driven) {
        if (driven < 0 || driven >= network.nearEnds().size()) {
            throw new IllegalArgumentException("driven is " + driven + "; the network has near ends 0 to "
                    + (network.nearEnds().size() - 1));
        }
        this.network = network;
        this.driven = driven;
    }

    /**
     * What the circuit reflects.
     *
     * @return Γ on the source's resistance
     */
    public PortResponse reflection() {
        return new Response(true, driven);
    }

    /**
     * What another circuit hears at the near end.
     *
     * @param heard which near end, from 0, another than the driven one
     * @return its voltage over the outgoing wave's
     */
    public PortResponse nearEndCrosstalk(int heard) {
        if (heard == driven || heard < 0 || heard >= network.nearEnds().size()) {
            throw new IllegalArgumentException("heard is " + heard + "; it must be a near end from 0 to "
                    + (network.nearEnds().size() - 1) + " other than the driven one, " + driven);
        }
        return new Response(true, heard);
    }

    /**
     * What arrives across a far end: of the driven circuit, or of another as far-end crosstalk.
     *
     * @param heard which far end, from 0
     * @return its voltage over the outgoing wave's
     */
    public PortResponse farEnd(int heard) {
        if (heard < 0 || heard >= network.farEnds().size()) {
            throw new IllegalArgumentException("heard is " + heard + "; the network has "
                    + network.farEnds().size() + " far ends, from 0");
        }
        return new Response(false, heard);
    }

    /**
     * Solves at given frequencies.
     *
     * @param frequencies where
     * @return voltages across all ends for an outgoing wave of 1 V
     */
    public CoupledSolver.Voltages voltages(Frequencies frequencies) {
        return CoupledSolver.solve(network, driven, frequencies);
    }

    private synchronized CoupledSolver.Voltages voltages(ContourGrid wanted, int wantedCount) {
        if (voltages == null || !wanted.equals(grid) || wantedCount != count) {
            voltages = voltages(wanted.points().slice(0, wantedCount));
            grid = wanted;
            count = wantedCount;
        }
        return voltages;
    }

    private ComplexArray response(ContourGrid wanted, int wantedCount, boolean near, int end) {
        CoupledSolver.Voltages all = voltages(wanted, wantedCount);
        ComplexArray across = near ? all.near().get(end) : all.far().get(end);
        if (!near || end != driven) {
            return across;
        }
        double[] re = across.copyOfReal();
        for (int k = 0; k < re.length; k++) {
            re[k] -= 1;
        }
        return ComplexArray.takingOver(re, across.copyOfImaginary());
    }

    private final class Response implements PortResponse {
        private final boolean near;
        private final int end;

        Response(boolean near, int end) {
            this.near = near;
            this.end = end;
        }

        @Override
        public double referenceOhms() {
            return network.nearEnds().get(driven).ohms();
        }

        @Override
        public Optional<ContourGrid> nativeGrid() {
            return Optional.empty();
        }

        @Override
        public ComplexArray reflection(ContourGrid wanted, int wantedCount) {
            return response(wanted, wantedCount, near, end);
        }
    }
}

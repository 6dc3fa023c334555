// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Network;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;

/**
 * Solves on a grid and remembers what metals and plastics do on the grid last used, so that the next cable costs only its
 * arithmetic. Share one among the ports of one task; safe for use by several threads.
 */
public final class PropagationCache {

    private ContourGrid grid;
    private int count;
    private FrequencyBlocks blocks;

    /** Makes an empty cache. */
    public PropagationCache() {
        // Nothing is remembered yet.
    }

    /**
     * Computes the reflection coefficient of a circuit at the first frequencies of a grid.
     *
     * @param network the circuit
     * @param referenceOhms reference resistance of Γ [Ω]
     * @param on the grid
     * @param wanted how many of its frequencies
     * @return Γ at each of them
     */
    public ComplexArray reflection(Network network, double referenceOhms, ContourGrid on, int wanted) {
        return blocks(on, wanted).reflection(network, referenceOhms);
    }

    private synchronized FrequencyBlocks blocks(ContourGrid on, int wanted) {
        if (blocks == null || !on.equals(grid) || wanted != count) {
            blocks = new FrequencyBlocks(on.points().slice(0, wanted));
            grid = on;
            count = wanted;
        }
        return blocks;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Network;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.Frequencies;

/**
 * Solves for the reflection coefficient at the port of a circuit, from the load backwards, in work proportional to the
 * number of elements times the number of frequencies.
 */
public final class ReflectionSolver {

    private ReflectionSolver() {}

    /**
     * Computes the reflection coefficient at the port.
     *
     * @param network the circuit
     * @param referenceOhms reference resistance of Γ: that of the source [Ω], above 0
     * @param frequencies the frequencies
     * @return Γ at each frequency; |Γ| ≤ 1 on s = jω for every passive circuit
     */
    public static ComplexArray reflection(Network network, double referenceOhms, Frequencies frequencies) {
        return new FrequencyBlocks(frequencies).reflection(network, referenceOhms);
    }

    /** Solves one block into its place of the whole. */
    static void solve(
            Network network, double referenceOhms, BlockWorkspace workspace, double[] re, double[] im, int offset) {
        ReflectionRecursion wave = ReflectionRecursion.through(network, referenceOhms, workspace);
        wave.onto(referenceOhms);
        ComplexBlock reflection = wave.reflection();
        System.arraycopy(reflection.real(), 0, re, offset, reflection.count());
        System.arraycopy(reflection.imaginary(), 0, im, offset, reflection.count());
        wave.end();
    }
}

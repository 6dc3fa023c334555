// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Network;
import cablewright.simulator.kernel.ComplexArray;

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
     * @param referenceOhms resistance on which it is told: that of the source [Ω], above 0
     * @param table what lines do at the frequencies in question
     * @return Γ at each frequency of the table; |Γ| ≤ 1 on s = jω for every passive circuit
     */
    public static ComplexArray reflection(Network network, double referenceOhms, LineTable table) {
        ReflectionRecursion wave = ReflectionRecursion.through(network, referenceOhms, table);
        wave.onto(referenceOhms);
        int n = table.frequencies().count();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int k = 0; k < n; k++) {
            re[k] = wave.gRe(k);
            im[k] = wave.gIm(k);
        }
        return ComplexArray.takingOver(re, im);
    }
}

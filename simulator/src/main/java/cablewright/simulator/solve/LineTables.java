// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Network;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The line tables of a list of frequencies, in chunks that the processor's cores share. Each frequency is computed alone,
 * so the number of cores changes nothing in the result.
 */
public final class LineTables {

    private static final int CHUNK = 2048;

    /** Most numbers kept over all chunks and both sorts, about 256 MB. */
    private static final long MOST_KEPT = 32_000_000;

    private final Frequencies frequencies;
    private final List<LineTable> chunks = new ArrayList<>();

    /** Makes empty tables for a list of frequencies. */
    public LineTables(Frequencies frequencies) {
        this.frequencies = frequencies;
        int count = frequencies.count();
        int pieces = (count + CHUNK - 1) / CHUNK;
        for (int i = 0; i < pieces; i++) {
            Frequencies slice = frequencies.slice(i * CHUNK, Math.min(count, (i + 1) * CHUNK));
            chunks.add(new LineTable(slice, MOST_KEPT / 2 / pieces));
        }
    }

    Frequencies frequencies() {
        return frequencies;
    }

    /**
     * Computes the reflection coefficient of a circuit.
     *
     * @param network the circuit
     * @param referenceOhms resistance on which it is told [Ω]
     * @return Γ at each frequency
     */
    public synchronized ComplexArray reflection(Network network, double referenceOhms) {
        double[] re = new double[frequencies.count()];
        double[] im = new double[frequencies.count()];
        IntStream.range(0, chunks.size()).parallel().forEach(i -> {
            ComplexArray part = ReflectionSolver.reflection(network, referenceOhms, chunks.get(i));
            for (int k = 0; k < part.count(); k++) {
                re[i * CHUNK + k] = part.re(k);
                im[i * CHUNK + k] = part.im(k);
            }
        });
        return ComplexArray.takingOver(re, im);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Solves a coupled network: the admittance matrix that its near end sees, from the far end back, and the voltages at both
 * ends while one port is driven.
 *
 * <p>Through a length, in the line's own modes, with y the admittance behind it and y_c the modes': Γ = (y_c + y)^−1 (y_c − y),
 * then E Γ E with E = diag(e^(−γl)), then y = y_c (1 − Γ)(1 + Γ)^−1: only decaying exponentials. Through a joint the rows and
 * columns change places. Frequencies are solved each by itself, so the number of threads changes nothing.
 */
public final class CoupledSolver {

    private static final int CHUNK = 512;

    private CoupledSolver() {}

    /**
     * Voltages while one port is driven, for an outgoing wave of 1 V: a source of 2 V behind the port's own resistance.
     *
     * @param near across each near end, at each frequency [V]
     * @param far across each far end, at each frequency [V]
     */
    public record Voltages(List<ComplexArray> near, List<ComplexArray> far) {

        /** Keeps its own lists. */
        public Voltages {
            near = List.copyOf(near);
            far = List.copyOf(far);
        }
    }

    /**
     * Solves.
     *
     * @param network the network
     * @param driven which of its near ends is driven, from 0
     * @param frequencies where
     * @return the voltages
     */
    public static Voltages solve(CoupledNetwork network, int driven, Frequencies frequencies) {
        if (driven < 0 || driven >= network.nearEnds().size()) {
            throw new IllegalArgumentException("driven is " + driven + "; the network has near ends 0 to "
                    + (network.nearEnds().size() - 1));
        }
        int n = frequencies.count();
        double[][] near = new double[2 * network.nearEnds().size()][n];
        double[][] far = new double[2 * network.farEnds().size()][n];
        int chunks = (n + CHUNK - 1) / CHUNK;
        IntStream.range(0, chunks).parallel().forEach(i -> {
            int from = i * CHUNK;
            int to = Math.min(n, from + CHUNK);
            solve(network, driven, frequencies.slice(from, to), from, near, far);
        });
        return new Voltages(pairsOf(near), pairsOf(far));
    }

    private static void solve(
            CoupledNetwork network, int driven, Frequencies frequencies, int offset, double[][] near, double[][] far) {
        Map<CoupledLine, ModalWave> waves = new HashMap<>();
        Map<CoupledLine, MixedWave> mixed = new HashMap<>();
        double[] sRe = frequencies.real();
        double[] sIm = frequencies.imaginary();
        for (CoupledElement element : network.elements()) {
            if (element instanceof CoupledElement.Length length) {
                CoupledLine line = length.line();
                if (line.mixing().isPresent()) {
                    mixed.computeIfAbsent(
                            line, key -> new MixedWave(key, key.mixing().get(), frequencies));
                } else {
                    waves.computeIfAbsent(line, key -> new ModalWave(key, frequencies));
                }
            }
        }
        CoupledState state = new CoupledState(network);
        for (int k = 0; k < frequencies.count(); k++) {
            state.startAtFarEnd();
            for (int i = network.elements().size() - 1; i >= 0; i--) {
                CoupledElement element = network.elements().get(i);
                if (element instanceof CoupledElement.Length length) {
                    if (length.line().mixing().isPresent()) {
                        state.through(mixed.get(length.line()), k, length.metres());
                    } else {
                        state.through(waves.get(length.line()), k, length.metres());
                    }
                } else if (element instanceof CoupledElement.Joint joint) {
                    state.through(joint);
                } else if (element instanceof CoupledElement.InConductor conductor) {
                    state.through(conductor, sRe[k], sIm[k]);
                } else {
                    state.through((CoupledElement.Between) element, sRe[k], sIm[k]);
                }
            }
            state.drive(driven, offset + k, near, far);
        }
    }

    private static List<ComplexArray> pairsOf(double[][] parts) {
        return IntStream.range(0, parts.length / 2)
                .mapToObj(i -> ComplexArray.takingOver(parts[2 * i], parts[2 * i + 1]))
                .toList();
    }
}

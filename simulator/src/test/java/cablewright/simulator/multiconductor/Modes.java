// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The modes of a line of several conductors: a real T with V = T v and I = T^−T i, in which T^−1 L T^−T and T^T C T are both
 * diagonal, so each mode is a line by itself, with λ and c for inductance and capacitance.
 *
 * <p>Where L and C commute, T is orthogonal, and a loss that is alike in all conductors stays diagonal too. Otherwise, with
 * S = √C and S L S = Q Λ Q^T, T = S^−1 Q, λ = Λ, c = 1. (C. R. Paul, Analysis of Multiconductor Transmission Lines, 2nd ed.,
 * ch. 7, from memory.)
 */
final class Modes {

    private static final double SAME = 1e-9;

    /** Weighs L against C where eigenvalues of both are mixed, so that likeness in one of them is told by the other. */
    private static final double MIX = 0.6180339887498949;

    private final int count;
    private final DMatrixRMaj toVoltages;
    private final DMatrixRMaj fromVoltages;
    private final double[] inductance;
    private final double[] capacitance;
    private final boolean orthogonal;

    private Modes(DMatrixRMaj toVoltages, DMatrixRMaj l, DMatrixRMaj c, boolean orthogonal) {
        this.count = l.numRows;
        this.toVoltages = toVoltages;
        this.fromVoltages = new DMatrixRMaj(count, count);
        CommonOps_DDRM.invert(toVoltages, fromVoltages);
        this.orthogonal = orthogonal;
        DMatrixRMaj modalL = modalInductance(l);
        DMatrixRMaj modalC = congruent(toVoltages, c);
        this.inductance = new double[count];
        this.capacitance = new double[count];
        for (int m = 0; m < count; m++) {
            inductance[m] = modalL.get(m, m);
            capacitance[m] = modalC.get(m, m);
        }
    }

    static Modes of(double[][] inductance, double[][] capacitance) {
        DMatrixRMaj l = checked("inductance", inductance, inductance.length);
        DMatrixRMaj c = checked("capacitance", capacitance, inductance.length);
        DMatrixRMaj mixed = new DMatrixRMaj(l.numRows, l.numRows);
        CommonOps_DDRM.add(1 / CommonOps_DDRM.trace(l), l, MIX / CommonOps_DDRM.trace(c), c, mixed);
        DMatrixRMaj vectors = eigenvectors(mixed);
        Modes together = new Modes(vectors, l, c, true);
        if (isDiagonal(together.modalInductance(l)) && isDiagonal(congruent(vectors, c))) {
            return together;
        }
        return apart(l, c);
    }

    private static Modes apart(DMatrixRMaj l, DMatrixRMaj c) {
        DMatrixRMaj q = eigenvectors(c);
        int n = l.numRows;
        DMatrixRMaj root = new DMatrixRMaj(n, n);
        DMatrixRMaj inverseRoot = new DMatrixRMaj(n, n);
        DMatrixRMaj values = congruent(q, c);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int m = 0; m < n; m++) {
                    double share = q.get(i, m) * q.get(j, m);
                    root.add(i, j, share * Math.sqrt(values.get(m, m)));
                    inverseRoot.add(i, j, share / Math.sqrt(values.get(m, m)));
                }
            }
        }
        DMatrixRMaj vectors = eigenvectors(congruent(root, l));
        DMatrixRMaj t = new DMatrixRMaj(n, n);
        CommonOps_DDRM.mult(inverseRoot, vectors, t);
        return new Modes(t, l, c, false);
    }

    private static DMatrixRMaj checked(String name, double[][] rows, int size) {
        boolean square = rows.length == size && size > 0 && size <= WireLayout.MOST_WIRES;
        for (double[] row : rows) {
            square = square && row.length == size;
        }
        if (!square) {
            throw new IllegalArgumentException(
                    name + " has " + rows.length + " rows; inductance and capacitance must be square and as large");
        }
        DMatrixRMaj matrix = new DMatrixRMaj(rows);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double least = SAME * Math.sqrt(rows[i][i] * rows[j][j]);
                if (!(Math.abs(rows[i][j] - rows[j][i]) <= least)) {
                    throw new IllegalArgumentException(name + "[" + i + "][" + j + "] is " + rows[i][j] + " and [" + j
                            + "][" + i + "] is " + rows[j][i] + "; they must be the same");
                }
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> eigen = decomposed(matrix);
        for (int i = 0; i < size; i++) {
            if (!(eigen.getEigenvalue(i).getReal() > 0)) {
                throw new IllegalArgumentException(
                        name + " has an eigenvalue of " + eigen.getEigenvalue(i).getReal() + "; all must be above 0");
            }
        }
        return matrix;
    }

    private static EigenDecomposition_F64<DMatrixRMaj> decomposed(DMatrixRMaj symmetric) {
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(symmetric.numRows, true, true);
        if (!eigen.decompose(symmetric.copy())) {
            throw new IllegalArgumentException("a matrix of the line has no eigenvalues; are all its values finite?");
        }
        return eigen;
    }

    private static DMatrixRMaj eigenvectors(DMatrixRMaj symmetric) {
        EigenDecomposition_F64<DMatrixRMaj> eigen = decomposed(symmetric);
        int n = symmetric.numRows;
        DMatrixRMaj vectors = new DMatrixRMaj(n, n);
        for (int m = 0; m < n; m++) {
            CommonOps_DDRM.insert(eigen.getEigenVector(m), vectors, 0, m);
        }
        return vectors;
    }

    /** A^T M A. */
    private static DMatrixRMaj congruent(DMatrixRMaj a, DMatrixRMaj m) {
        int n = m.numRows;
        DMatrixRMaj half = new DMatrixRMaj(n, n);
        DMatrixRMaj whole = new DMatrixRMaj(n, n);
        CommonOps_DDRM.multTransA(a, m, half);
        CommonOps_DDRM.mult(half, a, whole);
        return whole;
    }

    /** T^−1 L T^−T. */
    private DMatrixRMaj modalInductance(DMatrixRMaj l) {
        DMatrixRMaj half = new DMatrixRMaj(count, count);
        DMatrixRMaj whole = new DMatrixRMaj(count, count);
        CommonOps_DDRM.mult(fromVoltages, l, half);
        CommonOps_DDRM.multTransB(half, fromVoltages, whole);
        return whole;
    }

    private static boolean isDiagonal(DMatrixRMaj m) {
        for (int i = 0; i < m.numRows; i++) {
            for (int j = 0; j < i; j++) {
                if (Math.abs(m.get(i, j)) > SAME * Math.sqrt(m.get(i, i) * m.get(j, j))) {
                    return false;
                }
            }
        }
        return true;
    }

    int count() {
        return count;
    }

    /** Whether T is orthogonal, so that losses alike in all conductors keep the modes apart. */
    boolean orthogonal() {
        return orthogonal;
    }

    /** T: voltage of a conductor in a mode of one volt. */
    double voltage(int conductor, int mode) {
        return toVoltages.get(conductor, mode);
    }

    /** T^−1: share of a mode in the voltage of a conductor. */
    double share(int mode, int conductor) {
        return fromVoltages.get(mode, conductor);
    }

    double inductance(int mode) {
        return inductance[mode];
    }

    double capacitance(int mode) {
        return capacitance[mode];
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.ladder;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToIntFunction;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * Solves a line as a ladder of lumped parts in time: node voltages by the trapezoidal rule, one sparse matrix for all steps,
 * factorised once. Nothing here shares a formula with the engine that works in frequency.
 *
 * <p>Error: of second order in the step of time, and of second order in the length of a cell ({@link LadderCells}); on a
 * lossless line whose cells and steps are halved together it falls to a quarter, which a test holds. Validity: lines of
 * constant R, L, G and C, lumped parts, branches, breaks and contacts; everything at rest at t = 0.
 *
 * <p>A solver holds the state of one run at a time: use one for each thread.
 */
public final class LadderSolver {

    /** Most nodes of one circuit. */
    public static final int MOST_NODES = 1_000_000;

    private final double sourceConductance;
    private final double stepSeconds;
    private final boolean portShorted;
    private final List<Companion> companions;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> factors;
    private final int nodes;

    /**
     * Lays out and factorises a circuit.
     *
     * @param network the circuit; its lines are replaced by ladders
     * @param cells how many cells each line gets
     * @param sourceOhms resistance of the source [Ω], above 0
     * @param stepSeconds step of time [s], above 0
     * @throws IllegalArgumentException if the circuit can't be made of lumped parts, or is too large
     */
    public LadderSolver(Network network, ToIntFunction<Element.Line> cells, double sourceOhms, double stepSeconds) {
        if (!(sourceOhms > 0 && stepSeconds > 0)) {
            throw new IllegalArgumentException("sourceOhms is " + sourceOhms + " and stepSeconds is " + stepSeconds
                    + "; both must be greater than 0");
        }
        NodeList list = new NodeList(LadderCells.replace(network, cells));
        if (list.count() > MOST_NODES) {
            throw new IllegalArgumentException("the ladder has " + list.count() + " nodes; at most " + MOST_NODES
                    + " are allowed: use fewer cells");
        }
        this.sourceConductance = 1 / sourceOhms;
        this.stepSeconds = stepSeconds;
        this.portShorted = list.isPortShorted();
        this.companions = list.companions(stepSeconds);
        this.nodes = list.count();
        this.factors = LinearSolverFactory_DSCC.lu(FillReducing.NONE);
        if (!portShorted && !factors.setA(matrix())) {
            throw new IllegalArgumentException("the circuit's parts are too unequal to be solved together");
        }
    }

    private DMatrixSparseCSC matrix() {
        DMatrixSparseTriplet entries = new DMatrixSparseTriplet(nodes, nodes, 4 * companions.size() + 1);
        entries.addItem(0, 0, sourceConductance);
        for (Companion companion : companions) {
            boolean from = companion.from() != Companion.GROUND;
            boolean to = companion.to() != Companion.GROUND;
            if (from) {
                entries.addItem(companion.from(), companion.from(), companion.conductance());
            }
            if (to) {
                entries.addItem(companion.to(), companion.to(), companion.conductance());
            }
            if (from && to) {
                entries.addItem(companion.from(), companion.to(), -companion.conductance());
                entries.addItem(companion.to(), companion.from(), -companion.conductance());
            }
        }
        DMatrixSparseCSC matrix = new DMatrixSparseCSC(nodes, nodes, entries.getLength());
        DConvertMatrixStruct.convert(entries, matrix);
        matrix.sortIndices(null);
        return addedUp(matrix);
    }

    /** The conversion keeps every entry of one place; here they are added. */
    private static DMatrixSparseCSC addedUp(DMatrixSparseCSC matrix) {
        DMatrixSparseCSC sum = new DMatrixSparseCSC(matrix.numRows, matrix.numCols, matrix.nz_length);
        int length = 0;
        for (int column = 0; column < matrix.numCols; column++) {
            sum.col_idx[column] = length;
            for (int i = matrix.col_idx[column]; i < matrix.col_idx[column + 1]; i++) {
                if (length > sum.col_idx[column] && sum.nz_rows[length - 1] == matrix.nz_rows[i]) {
                    sum.nz_values[length - 1] += matrix.nz_values[i];
                } else {
                    sum.nz_rows[length] = matrix.nz_rows[i];
                    sum.nz_values[length++] = matrix.nz_values[i];
                }
            }
        }
        sum.col_idx[matrix.numCols] = length;
        sum.nz_length = length;
        sum.indicesSorted = true;
        return sum;
    }

    /**
     * Counts the nodes.
     *
     * @return number of nodes that are not ground, the port among them
     */
    public int nodes() {
        return nodes;
    }

    /**
     * Runs from rest.
     *
     * @param openVolts open voltage of the source at a time in seconds: twice the outgoing wave; 0 at t = 0
     * @param steps how many steps of time
     * @return voltage at the port after 0, 1, 2 … steps, steps + 1 values
     */
    public double[] portVolts(DoubleUnaryOperator openVolts, int steps) {
        double[] port = new double[steps + 1];
        if (portShorted) {
            return port;
        }
        companions.forEach(Companion::rest);
        DMatrixRMaj right = new DMatrixRMaj(nodes, 1);
        DMatrixRMaj volts = new DMatrixRMaj(nodes, 1);
        for (int n = 1; n <= steps; n++) {
            right.zero();
            right.data[0] = sourceConductance * openVolts.applyAsDouble(n * stepSeconds);
            for (Companion companion : companions) {
                companion.prepare(right.data);
            }
            factors.solve(right, volts);
            for (Companion companion : companions) {
                companion.step(volts.data);
            }
            port[n] = volts.data[0];
        }
        return port;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.kernel.ComplexBlock;
import java.util.ArrayList;
import java.util.List;

/**
 * Waves that leave for waves that arrive, b = M a, at a block of frequencies. Ports are rows and columns of the same number;
 * further rows are waves that are only looked at.
 *
 * <p>A two-port X joined at port q makes M_ij + M_iq X11 M_qj/D, M_iq X12/D, X21 M_qj/D and X22 + X21 M_qq X12/D of the matrix,
 * with D = 1 − M_qq X11: the series of all bounces between the two, summed (Redheffer's star product, from memory). Where D = 0
 * a piece is shut off between two total reflections: nothing gets in.
 */
public final class WaveMatrix {

    private final int count;
    private final List<List<ComplexBlock>> rows = new ArrayList<>();
    private final ComplexBlock bounces;
    private final ComplexBlock a;
    private final ComplexBlock b;
    private final ComplexBlock c;

    /** Makes a matrix of zeros. */
    public WaveMatrix(int rows, int columns, int count) {
        this.count = count;
        for (int i = 0; i < rows; i++) {
            List<ComplexBlock> row = new ArrayList<>();
            for (int j = 0; j < columns; j++) {
                row.add(new ComplexBlock(count));
            }
            this.rows.add(row);
        }
        bounces = new ComplexBlock(count);
        a = new ComplexBlock(count);
        b = new ComplexBlock(count);
        c = new ComplexBlock(count);
    }

    public int rows() {
        return rows.size();
    }

    private int columns() {
        return rows.get(0).size();
    }

    /** The entry itself. */
    public ComplexBlock at(int row, int column) {
        return rows.get(row).get(column);
    }

    /** Joins a two-port at a port. */
    public void join(int q, TwoPort x) {
        ComplexBlock own = at(q, q);
        sumBounces(own, x.x11());
        addBounces(rows(), q, b.setProduct(x.x11(), bounces));
        ComplexBlock onward = b.setProduct(x.x21(), bounces);
        ComplexBlock home = a.setProduct(x.x12(), bounces);
        for (int i = 0; i < rows(); i++) {
            if (i != q) {
                at(i, q).times(home);
            }
        }
        for (int j = 0; j < columns(); j++) {
            if (j != q) {
                at(q, j).times(onward);
            }
        }
        own.times(onward).times(x.x12()).plus(x.x22());
    }

    /** 1/(1 − M_qq X11), zero where that has no bottom. */
    private void sumBounces(ComplexBlock own, ComplexBlock back) {
        a.setProduct(own, back);
        b.setOneMinus(a);
        bounces.fill(1).over(b).zeroWhereZero(b);
    }

    /** M_ij + M_iq g M_qj for the first rows but q. */
    private void addBounces(int first, int q, ComplexBlock g) {
        for (int j = 0; j < Math.min(first, columns()); j++) {
            if (j != q) {
                c.setProduct(g, at(q, j));
                for (int i = 0; i < first; i++) {
                    if (i != q) {
                        at(i, j).plusProduct(at(i, q), c);
                    }
                }
            }
        }
    }

    /** Joins a length of line on the port's own impedance, e^(−γl). */
    public void through(int q, ComplexBlock decay) {
        for (List<ComplexBlock> row : rows) {
            row.get(q).times(decay);
        }
        for (ComplexBlock entry : rows.get(q)) {
            entry.times(decay);
        }
    }

    /** Closes a port by what reflects there, and takes it out; ports after it move down by one. */
    public void close(int q, ComplexBlock reflection) {
        sumBounces(at(q, q), reflection);
        addBounces(rows(), q, b.setProduct(reflection, bounces));
        rows.remove(q);
        rows.forEach(row -> row.remove(q));
    }

    /**
     * Joins a three-port of real numbers at a port of a square matrix: its first side there, its second becomes the port, its
     * third a new one.
     *
     * @return the new port
     */
    public int fork(int q, double[][] three) {
        int made = addPort();
        ComplexBlock own = at(q, q);
        sumBounces(own, a.fill(three[0][0]));
        for (int i = 0; i < made; i++) {
            if (i != q) {
                at(i, made).setProduct(at(i, q), bounces).times(three[0][2]);
                at(made, i).setProduct(at(q, i), bounces).times(three[2][0]);
            }
        }
        addBounces(made, q, b.set(bounces).times(three[0][0]));
        for (int i = 0; i < made; i++) {
            if (i != q) {
                at(i, q).times(bounces).times(three[0][1]);
                at(q, i).times(bounces).times(three[1][0]);
            }
        }
        c.setProduct(own, bounces);
        for (int i = 1; i < 3; i++) {
            for (int j = 1; j < 3; j++) {
                at(i == 1 ? q : made, j == 1 ? q : made)
                        .set(c)
                        .times(three[i][0] * three[0][j])
                        .plus(three[i][j]);
            }
        }
        return made;
    }

    private int addPort() {
        int made = rows();
        rows.forEach(row -> row.add(new ComplexBlock(count)));
        List<ComplexBlock> row = new ArrayList<>();
        for (int j = 0; j <= made; j++) {
            row.add(new ComplexBlock(count));
        }
        rows.add(row);
        return made;
    }
}

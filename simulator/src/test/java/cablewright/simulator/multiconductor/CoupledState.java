// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.ImpedanceFraction;
import cablewright.simulator.kernel.ComplexBlock;
import java.util.List;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_ZDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** What lies behind a place of a coupled network at one frequency: admittance, and how voltages there reach the far end. */
final class CoupledState {

    private final CoupledNetwork network;
    private final int n;
    private final LinearSolverDense<ZMatrixRMaj> solver;
    private final ZMatrixRMaj admittance;
    private final ZMatrixRMaj toFarEnd;
    private final ZMatrixRMaj identity;
    private final ZMatrixRMaj a;
    private final ZMatrixRMaj b;
    private final ZMatrixRMaj c;
    private final ZMatrixRMaj d;
    private final ComplexBlock numerator = new ComplexBlock(1);
    private final ComplexBlock denominator = new ComplexBlock(1);
    private final double[] decay;
    private final double[] pair = new double[2];

    CoupledState(CoupledNetwork network) {
        this.network = network;
        this.n = network.conductors();
        this.solver = LinearSolverFactory_ZDRM.lu(n);
        this.admittance = new ZMatrixRMaj(n, n);
        this.toFarEnd = new ZMatrixRMaj(n, n);
        this.identity = CommonOps_ZDRM.identity(n);
        this.a = new ZMatrixRMaj(n, n);
        this.b = new ZMatrixRMaj(n, n);
        this.c = new ZMatrixRMaj(n, n);
        this.d = new ZMatrixRMaj(n, n);
        this.decay = new double[2 * n];
    }

    void startAtFarEnd() {
        admittance.zero();
        tie(admittance, network.farEnds());
        toFarEnd.setTo(identity);
    }

    private static void tie(ZMatrixRMaj matrix, List<Tie> ties) {
        for (Tie tie : ties) {
            double g = 1 / tie.ohms();
            add(matrix, tie.from(), tie.from(), g);
            if (tie.to() != Tie.REFERENCE) {
                add(matrix, tie.to(), tie.to(), g);
                add(matrix, tie.from(), tie.to(), -g);
                add(matrix, tie.to(), tie.from(), -g);
            }
        }
    }

    private static void add(ZMatrixRMaj matrix, int row, int column, double re) {
        matrix.data[2 * (row * matrix.numCols + column)] += re;
    }

    void through(CoupledElement.Joint joint) {
        a.setTo(admittance);
        b.setTo(toFarEnd);
        for (int i = 0; i < n; i++) {
            int beyond = joint.goesOnAs(i);
            for (int j = 0; j < n; j++) {
                copy(a, beyond, joint.goesOnAs(j), admittance, i, j);
                copy(b, j, beyond, toFarEnd, j, i);
            }
        }
    }

    private static void copy(ZMatrixRMaj from, int row, int column, ZMatrixRMaj to, int toRow, int toColumn) {
        int at = 2 * (row * from.numCols + column);
        int there = 2 * (toRow * to.numCols + toColumn);
        to.data[there] = from.data[at];
        to.data[there + 1] = from.data[at + 1];
    }

    void through(ModalWave wave, int k, double metres) {
        Modes modes = wave.modes();
        // a: admittance behind, in modes; then b = y_c + y and c = y_c − y; then d = Γ at the far side.
        toModes(modes, admittance, a);
        for (int i = 0; i < n * n; i++) {
            boolean diagonal = i / n == i % n;
            double re = diagonal ? wave.admittanceRe(i / n, k) : 0;
            double im = diagonal ? wave.admittanceIm(i / n, k) : 0;
            b.data[2 * i] = re + a.data[2 * i];
            b.data[2 * i + 1] = im + a.data[2 * i + 1];
            c.data[2 * i] = re - a.data[2 * i];
            c.data[2 * i + 1] = im - a.data[2 * i + 1];
        }
        solve(b, c, d);
        for (int m = 0; m < n; m++) {
            wave.decay(m, k, metres, pair);
            decay[2 * m] = pair[0];
            decay[2 * m + 1] = pair[1];
        }
        // b = 1 + E Γ E, a = its inverse.
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int at = 2 * (i * n + j);
                b.data[at] = d.data[at];
                b.data[at + 1] = d.data[at + 1];
                times(b.data, at, decay[2 * i], decay[2 * i + 1]);
                times(b.data, at, decay[2 * j], decay[2 * j + 1]);
            }
            add(b, i, i, 1);
            add(d, i, i, 1);
        }
        solve(b, identity, a);
        carryForward(modes);
        // Admittance before: y_c (2 a − 1).
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int at = 2 * (i * n + j);
                a.data[at] = 2 * a.data[at] - (i == j ? 1 : 0);
                a.data[at + 1] *= 2;
                times(a.data, at, wave.admittanceRe(i, k), wave.admittanceIm(i, k));
            }
        }
        fromModes(modes, a, admittance);
    }

    /**
     * Through a length that mixes its modes, with R and T of it on the modes' impedances and Γ what lies behind it: Γ in front is
     * R + T Γ (1 − R Γ)^−1 T, the voltage behind (1 + Γ)(1 − R Γ)^−1 T (1 + Γ in front)^−1 of that in front.
     */
    void through(MixedWave wave, int k, double metres) {
        Modes modes = wave.modes();
        wave.over(k, metres);
        toModes(modes, admittance, a);
        scale(wave, a, 1);
        // d = Γ behind = (1 − y)(1 + y)^−1, from the right: d (1 + y) = 1 − y, y symmetric.
        CommonOps_ZDRM.subtract(identity, a, b);
        CommonOps_ZDRM.add(identity, a, c);
        solve(c, b, d);
        CommonOps_ZDRM.mult(wave.reflection, d, a);
        CommonOps_ZDRM.subtract(identity, a, b);
        solve(b, wave.transmission, c);
        // c = (1 − R Γ)^−1 T; a = Γ in front.
        CommonOps_ZDRM.mult(d, c, b);
        CommonOps_ZDRM.mult(wave.transmission, b, a);
        CommonOps_ZDRM.add(a, wave.reflection, a);
        CommonOps_ZDRM.add(b, c, c);
        CommonOps_ZDRM.add(identity, a, b);
        solve(b, identity, d);
        CommonOps_ZDRM.mult(c, d, b);
        scaleVoltages(wave, b);
        realTimes((i, m) -> modes.voltage(i, m), b, c);
        timesReal(c, (m, j) -> modes.share(m, j), b);
        CommonOps_ZDRM.mult(toFarEnd, b, c);
        toFarEnd.setTo(c);
        // y in front: (1 − Γ)(1 + Γ)^−1.
        CommonOps_ZDRM.subtract(identity, a, b);
        CommonOps_ZDRM.mult(b, d, a);
        scale(wave, a, -1);
        fromModes(modes, a, admittance);
    }

    /** To or from the modes' impedances: y √(Zi Zj), or over it. */
    private void scale(MixedWave wave, ZMatrixRMaj matrix, int power) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double factor = Math.sqrt(wave.ohms(i) * wave.ohms(j));
                times(matrix.data, 2 * (i * n + j), power > 0 ? factor : 1 / factor, 0);
            }
        }
    }

    /** From voltages over √Z on both sides to voltages. */
    private void scaleVoltages(MixedWave wave, ZMatrixRMaj matrix) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                times(matrix.data, 2 * (i * n + j), Math.sqrt(wave.ohms(i) / wave.ohms(j)), 0);
            }
        }
    }

    /** z in conductor i: y ← y − y_i y_i^T n/(d + n y_ii), and the voltage behind it is less by n/(d + n y_ii) y_i^T v; z = n/d. */
    void through(CoupledElement.InConductor element, double sRe, double sIm) {
        int i = element.conductor();
        double nRe = 1;
        double nIm = 0;
        double dRe = 0;
        double dIm = 0;
        if (element.part().isPresent()) {
            fraction(element.part().get(), sRe, sIm);
            nRe = numerator.re(0);
            nIm = numerator.im(0);
            dRe = denominator.re(0);
            dIm = denominator.im(0);
        }
        int ii = 2 * (i * n + i);
        double qRe = dRe + nRe * admittance.data[ii] - nIm * admittance.data[ii + 1];
        double qIm = dIm + nRe * admittance.data[ii + 1] + nIm * admittance.data[ii];
        double size = qRe * qRe + qIm * qIm;
        if (size == 0) {
            return;
        }
        double gRe = (nRe * qRe + nIm * qIm) / size;
        double gIm = (nIm * qRe - nRe * qIm) / size;
        // a = y as it was.
        a.setTo(admittance);
        for (int column = 0; column < n; column++) {
            int row = 2 * (i * n + column);
            double hRe = gRe * a.data[row] - gIm * a.data[row + 1];
            double hIm = gRe * a.data[row + 1] + gIm * a.data[row];
            for (int j = 0; j < n; j++) {
                subtract(admittance, j, column, a.data[2 * (j * n + i)], a.data[2 * (j * n + i) + 1], hRe, hIm);
                b.data[2 * (j * n + column)] =
                        toFarEnd.data[2 * (j * n + i)] * hRe - toFarEnd.data[2 * (j * n + i) + 1] * hIm;
                b.data[2 * (j * n + column) + 1] =
                        toFarEnd.data[2 * (j * n + i)] * hIm + toFarEnd.data[2 * (j * n + i) + 1] * hRe;
            }
        }
        CommonOps_ZDRM.subtract(toFarEnd, b, toFarEnd);
    }

    /** Z = n/d of a part. */
    private void fraction(Lumped part, double sRe, double sIm) {
        ComplexBlock s = new ComplexBlock(1);
        s.put(0, sRe, sIm);
        ImpedanceFraction.of(part, s, numerator, denominator);
    }

    private static void subtract(
            ZMatrixRMaj matrix, int row, int column, double aRe, double aIm, double bRe, double bIm) {
        int at = 2 * (row * matrix.numCols + column);
        matrix.data[at] -= aRe * bRe - aIm * bIm;
        matrix.data[at + 1] -= aRe * bIm + aIm * bRe;
    }

    /** y between two conductors, d/n of the part. */
    void through(CoupledElement.Between element, double sRe, double sIm) {
        fraction(element.part(), sRe, sIm);
        denominator.over(numerator);
        double re = denominator.re(0);
        double im = denominator.im(0);
        int from = element.from();
        int to = element.to();
        subtract(admittance, from, from, -1, 0, re, im);
        if (to != Tie.REFERENCE) {
            subtract(admittance, to, to, -1, 0, re, im);
            subtract(admittance, from, to, 1, 0, re, im);
            subtract(admittance, to, from, 1, 0, re, im);
        }
    }

    /** Far end from near side of the length: T (1 + Γ) E (1 + E Γ E)^−1 T^−1, with d = 1 + Γ and a = (1 + E Γ E)^−1. */
    private void carryForward(Modes modes) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                times(d.data, 2 * (i * n + j), decay[2 * j], decay[2 * j + 1]);
            }
        }
        CommonOps_ZDRM.mult(d, a, c);
        realTimes((i, m) -> modes.voltage(i, m), c, b);
        timesReal(b, (m, j) -> modes.share(m, j), c);
        CommonOps_ZDRM.mult(toFarEnd, c, b);
        toFarEnd.setTo(b);
    }

    private void solve(ZMatrixRMaj matrix, ZMatrixRMaj right, ZMatrixRMaj answer) {
        if (!solver.setA(matrix)) {
            throw new IllegalStateException(
                    "a coupled line is singular at one frequency; it must have some end or loss");
        }
        solver.solve(right, answer);
    }

    private static void times(double[] data, int at, double re, double im) {
        double was = data[at];
        data[at] = was * re - data[at + 1] * im;
        data[at + 1] = was * im + data[at + 1] * re;
    }

    /** An entry of a real matrix. */
    private interface Entry {
        double at(int row, int column);
    }

    /** T^T Y T. */
    private void toModes(Modes modes, ZMatrixRMaj y, ZMatrixRMaj out) {
        realTimes((m, i) -> modes.voltage(i, m), y, b);
        timesReal(b, (i, m) -> modes.voltage(i, m), out);
    }

    /** T^−T y T^−1. */
    private void fromModes(Modes modes, ZMatrixRMaj y, ZMatrixRMaj out) {
        realTimes((i, m) -> modes.share(m, i), y, b);
        timesReal(b, (m, j) -> modes.share(m, j), out);
    }

    private void realTimes(Entry real, ZMatrixRMaj right, ZMatrixRMaj out) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double re = 0;
                double im = 0;
                for (int m = 0; m < n; m++) {
                    double factor = real.at(i, m);
                    re += factor * right.data[2 * (m * n + j)];
                    im += factor * right.data[2 * (m * n + j) + 1];
                }
                out.data[2 * (i * n + j)] = re;
                out.data[2 * (i * n + j) + 1] = im;
            }
        }
    }

    private void timesReal(ZMatrixRMaj left, Entry real, ZMatrixRMaj out) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double re = 0;
                double im = 0;
                for (int m = 0; m < n; m++) {
                    double factor = real.at(m, j);
                    re += factor * left.data[2 * (i * n + m)];
                    im += factor * left.data[2 * (i * n + m) + 1];
                }
                out.data[2 * (i * n + j)] = re;
                out.data[2 * (i * n + j) + 1] = im;
            }
        }
    }

    /** Drives one near end by 2 V behind its own resistance and writes what is across each end. */
    void drive(int driven, int place, double[][] near, double[][] far) {
        Tie source = network.nearEnds().get(driven);
        a.setTo(admittance);
        tie(a, network.nearEnds());
        ZMatrixRMaj current = new ZMatrixRMaj(n, 1);
        current.data[2 * source.from()] = 2 / source.ohms();
        if (source.to() != Tie.REFERENCE) {
            current.data[2 * source.to()] = -2 / source.ohms();
        }
        ZMatrixRMaj volts = new ZMatrixRMaj(n, 1);
        solve(a, current, volts);
        across(network.nearEnds(), volts, place, near);
        ZMatrixRMaj beyond = new ZMatrixRMaj(n, 1);
        CommonOps_ZDRM.mult(toFarEnd, volts, beyond);
        across(network.farEnds(), beyond, place, far);
    }

    private static void across(List<Tie> ties, ZMatrixRMaj volts, int place, double[][] out) {
        for (int i = 0; i < ties.size(); i++) {
            Tie tie = ties.get(i);
            boolean toReference = tie.to() == Tie.REFERENCE;
            out[2 * i][place] = volts.data[2 * tie.from()] - (toReference ? 0 : volts.data[2 * tie.to()]);
            out[2 * i + 1][place] = volts.data[2 * tie.from() + 1] - (toReference ? 0 : volts.data[2 * tie.to() + 1]);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.line.Frequencies;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_ZDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * A length of line whose losses mix its modes, so that no set of modes serves at all frequencies: its reflection R and
 * transmission T, both ways alike, in the modes that it would have without loss and on their impedances.
 *
 * <p>In those modes, with z and y scaled by the modes' impedances, waves obey {@code a' = −(P + Q) a − (P − Q) b},
 * {@code b' = (P − Q) a + (P + Q) b}, P = z/2, Q = y/2. A length so short that the norm of z + y is at most 2^−4 is taken by the
 * Taylor series of its chain matrix to the last digit; then it is doubled until it is long enough:
 * {@code R ← R + T (1 − R R)^−1 R T}, {@code T ← T (1 − R R)^−1 T} (two like slabs one behind the other; the adding-doubling
 * method, van de Hulst, from memory). Only quantities of a passive length occur, so no length or loss overflows; each doubling
 * doubles the last digits' error, to 1e−11 for a thousand wavelengths.
 */
final class MixedWave {

    private static final int TERMS = 16;
    private static final double SHORT = 1.0 / 16;

    private final Modes modes;
    private final int n;
    private final double[] sRe;
    private final double[] sIm;
    private final double[][] loss;
    private final LinearSolverDense<ZMatrixRMaj> solver;
    private final ZMatrixRMaj z;
    private final ZMatrixRMaj y;
    final ZMatrixRMaj reflection;
    final ZMatrixRMaj transmission;
    private final ZMatrixRMaj identity;
    private final ZMatrixRMaj a;
    private final ZMatrixRMaj b;
    private final ZMatrixRMaj c;

    MixedWave(CoupledLine line, ConductorLosses losses, Frequencies frequencies) {
        this.modes = line.modes();
        this.n = modes.count();
        this.sRe = frequencies.real();
        this.sIm = frequencies.imaginary();
        this.loss = losses.at(sRe, sIm);
        this.solver = LinearSolverFactory_ZDRM.lu(n);
        this.z = new ZMatrixRMaj(n, n);
        this.y = new ZMatrixRMaj(n, n);
        this.reflection = new ZMatrixRMaj(n, n);
        this.transmission = new ZMatrixRMaj(n, n);
        this.identity = CommonOps_ZDRM.identity(n);
        this.a = new ZMatrixRMaj(n, n);
        this.b = new ZMatrixRMaj(n, n);
        this.c = new ZMatrixRMaj(n, n);
    }

    Modes modes() {
        return modes;
    }

    /** Impedance of a mode without loss. */
    double ohms(int mode) {
        return Math.sqrt(modes.inductance(mode) / modes.capacitance(mode));
    }

    /** Works out R and T of a length at one frequency. */
    void over(int k, double metres) {
        double norm = fill(k, metres);
        int doublings = norm <= SHORT ? 0 : (int) Math.ceil(Math.log(norm / SHORT) / Math.log(2));
        double part = Math.pow(2, -doublings);
        CommonOps_ZDRM.scale(part, 0, z);
        CommonOps_ZDRM.scale(part, 0, y);
        startShort();
        for (int i = 0; i < doublings; i++) {
            twice();
        }
    }

    /** z and y of the whole length in modes, over and times the modes' impedances; their norm. */
    private double fill(int k, double metres) {
        double dRe = loss[2 * n + 2][k];
        double dIm = loss[2 * n + 3][k];
        double most = 0;
        for (int i = 0; i < n; i++) {
            double row = 0;
            for (int j = 0; j < n; j++) {
                double re = loss[2 * n][k] * common(i) * common(j);
                double im = loss[2 * n + 1][k] * common(i) * common(j);
                for (int w = 0; w < n; w++) {
                    double both = modes.share(i, w) * modes.share(j, w);
                    re += both * loss[2 * w][k];
                    im += both * loss[2 * w + 1][k];
                }
                if (i == j) {
                    re += sRe[k] * modes.inductance(i);
                    im += sIm[k] * modes.inductance(i);
                }
                double scale = metres / Math.sqrt(ohms(i) * ohms(j));
                int at = 2 * (i * n + j);
                z.data[at] = re * scale;
                z.data[at + 1] = im * scale;
                double cap = i == j ? modes.capacitance(i) * ohms(i) * metres : 0;
                y.data[at] = cap * (sRe[k] * dRe - sIm[k] * dIm);
                y.data[at + 1] = cap * (sRe[k] * dIm + sIm[k] * dRe);
                row += Math.hypot(z.data[at], z.data[at + 1]) + Math.hypot(y.data[at], y.data[at + 1]);
            }
            most = Math.max(most, row);
        }
        return most;
    }

    /** Sum of the shares of all conductors in a mode: what a current in the reference sees. */
    private double common(int mode) {
        double sum = 0;
        for (int w = 0; w < n; w++) {
            sum += modes.share(mode, w);
        }
        return sum;
    }

    /**
     * R and T of a short length from its halves: driven alike from both sides its middle carries no current, driven opposite no
     * voltage, so R = (Γe + Γo)/2 and T = (Γe − Γo)/2. On a half, from the middle to the port, with z and y those of the half:
     * V = Σ (zy)^m/(2m)! v + Σ (zy)^m z/(2m+1)! i, I = Σ (yz)^m y/(2m+1)! v + Σ (yz)^m/(2m)! i.
     */
    private void startShort() {
        CommonOps_ZDRM.scale(0.5, 0, z);
        CommonOps_ZDRM.scale(0.5, 0, y);
        ZMatrixRMaj zy = new ZMatrixRMaj(n, n);
        ZMatrixRMaj yz = new ZMatrixRMaj(n, n);
        CommonOps_ZDRM.mult(z, y, zy);
        CommonOps_ZDRM.mult(y, z, yz);
        ZMatrixRMaj even = series(zy, identity, 0);
        ZMatrixRMaj through = series(zy, z, 1);
        ZMatrixRMaj leak = series(yz, y, 1);
        ZMatrixRMaj back = series(yz, identity, 0);
        ZMatrixRMaj gammaEven = quotient(even, leak);
        ZMatrixRMaj gammaOdd = quotient(through, back);
        CommonOps_ZDRM.add(gammaEven, gammaOdd, reflection);
        CommonOps_ZDRM.scale(0.5, 0, reflection);
        CommonOps_ZDRM.subtract(gammaEven, gammaOdd, transmission);
        CommonOps_ZDRM.scale(0.5, 0, transmission);
    }

    /** Σ m^k f/(2k + odd)!. */
    private ZMatrixRMaj series(ZMatrixRMaj m, ZMatrixRMaj first, int odd) {
        ZMatrixRMaj sum = first.copy();
        ZMatrixRMaj term = first.copy();
        for (int k = 1; k <= TERMS / 2; k++) {
            CommonOps_ZDRM.mult(m, term, a);
            term.setTo(a);
            CommonOps_ZDRM.scale(1.0 / ((2 * k + odd) * (2 * k + odd - 1)), 0, term);
            CommonOps_ZDRM.add(sum, term, sum);
        }
        return sum;
    }

    /** (v − i)(v + i)^−1. */
    private ZMatrixRMaj quotient(ZMatrixRMaj v, ZMatrixRMaj i) {
        CommonOps_ZDRM.subtract(v, i, a);
        CommonOps_ZDRM.add(v, i, b);
        ZMatrixRMaj inverse = new ZMatrixRMaj(n, n);
        solve(b, identity, inverse);
        ZMatrixRMaj out = new ZMatrixRMaj(n, n);
        CommonOps_ZDRM.mult(a, inverse, out);
        return out;
    }

    private void twice() {
        CommonOps_ZDRM.mult(reflection, reflection, a);
        CommonOps_ZDRM.subtract(identity, a, b);
        solve(b, transmission, c);
        // c = (1 − R R)^−1 T; R ← R + T R c, T ← T c.
        CommonOps_ZDRM.mult(reflection, c, a);
        CommonOps_ZDRM.mult(transmission, a, b);
        CommonOps_ZDRM.add(reflection, b, reflection);
        CommonOps_ZDRM.mult(transmission, c, a);
        transmission.setTo(a);
    }

    private void solve(ZMatrixRMaj matrix, ZMatrixRMaj right, ZMatrixRMaj answer) {
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("a coupled line is singular at one frequency; it must have some loss");
        }
        solver.solve(right, answer);
    }
}

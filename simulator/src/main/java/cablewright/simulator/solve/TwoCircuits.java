// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.kernel.ComplexArray;
import java.util.Arrays;

/**
 * What two circuits reflect together, and how waves that set out here reach a far place, at each of a list of frequencies:
 * S, b = S a at the near side, and F, the forward waves at the far place over a. Either the two circuits themselves, or their
 * even and odd mode, e = (A + B)/2 and o = (A − B)/2; which it is, the caller knows.
 *
 * <p>Putting a two-port t before circuit p: with q the other and D = 1/(1 − t22 Spp), Spp ← t11 + t12 t21 D Spp,
 * Spq ← t12 D Spq, Sqp ← t21 D Sqp, Sqq ← Sqq + t22 D Sqp Spq, and a wave behind it ← D (t21 ap + t22 Spq aq).
 */
final class TwoCircuits {

    /** Index of S or F: 2 row + column. */
    private final double[][] sRe;

    private final double[][] sIm;
    private final double[][] fRe;
    private final double[][] fIm;
    private final int count;

    TwoCircuits(int count) {
        this.count = count;
        sRe = new double[4][count];
        sIm = new double[4][count];
        fRe = new double[4][count];
        fIm = new double[4][count];
        restart(false);
    }

    /** Makes here the place to which F reaches; its rows change places if wanted. */
    void restart(boolean swapped) {
        for (int i = 0; i < 4; i++) {
            Arrays.fill(fRe[i], (i == 0 || i == 3) == swapped ? 0 : 1);
            Arrays.fill(fIm[i], 0);
        }
    }

    void setReflection(int circuit, int k, double re, double im) {
        sRe[3 * circuit][k] = re;
        sIm[3 * circuit][k] = im;
    }

    double sRe(int row, int column, int k) {
        return sRe[2 * row + column][k];
    }

    double sIm(int row, int column, int k) {
        return sIm[2 * row + column][k];
    }

    ComplexArray[] reflections() {
        return copy(sRe, sIm);
    }

    ComplexArray[] forwards() {
        return copy(fRe, fIm);
    }

    private ComplexArray[] copy(double[][] re, double[][] im) {
        ComplexArray[] out = new ComplexArray[4];
        for (int i = 0; i < 4; i++) {
            out[i] = ComplexArray.takingOver(re[i].clone(), im[i].clone());
        }
        return out;
    }

    /** From circuits to modes: S ← U S V, F ← F V, with a = V (modes), V = [1 1; 1 −1], U = V/2. */
    void toModes() {
        change(sRe, 0.5, true);
        change(sIm, 0.5, true);
        change(fRe, 1, false);
        change(fIm, 1, false);
    }

    /** From modes to circuits: S ← V S U, F ← F U. */
    void toCircuits() {
        change(sRe, 0.5, true);
        change(sIm, 0.5, true);
        change(fRe, 0.5, false);
        change(fIm, 0.5, false);
    }

    private void change(double[][] m, double factor, boolean bothSides) {
        for (int k = 0; k < count; k++) {
            double p0 = m[0][k] + m[1][k];
            double p1 = m[0][k] - m[1][k];
            double p2 = m[2][k] + m[3][k];
            double p3 = m[2][k] - m[3][k];
            m[0][k] = factor * (bothSides ? p0 + p2 : p0);
            m[1][k] = factor * (bothSides ? p1 + p3 : p1);
            m[2][k] = factor * (bothSides ? p0 - p2 : p2);
            m[3][k] = factor * (bothSides ? p1 - p3 : p3);
        }
    }

    /** Puts the step from an impedance in front onto one behind before one of the two. */
    void step(int p, int k, double frontRe, double frontIm, double behindRe, double behindIm) {
        if (frontRe == behindRe && frontIm == behindIm) {
            return;
        }
        double nRe = behindRe + frontRe;
        double nIm = behindIm + frontIm;
        double size = nRe * nRe + nIm * nIm;
        double rRe = ((behindRe - frontRe) * nRe + (behindIm - frontIm) * nIm) / size;
        double rIm = ((behindIm - frontIm) * nRe - (behindRe - frontRe) * nIm) / size;
        twoPort(p, k, rRe, rIm, 1 - rRe, -rIm, 1 + rRe, rIm, -rRe, -rIm);
    }

    /** Puts any two-port before one of the two: t11, t12, t21, t22. */
    void twoPort(
            int p,
            int k,
            double t11Re,
            double t11Im,
            double t12Re,
            double t12Im,
            double t21Re,
            double t21Im,
            double t22Re,
            double t22Im) {
        int pp = 3 * p;
        int pq = 1 + p;
        int qp = 2 - p;
        int qq = 3 - 3 * p;
        double spRe = sRe[pp][k];
        double spIm = sIm[pp][k];
        double nRe = 1 - (t22Re * spRe - t22Im * spIm);
        double nIm = -(t22Re * spIm + t22Im * spRe);
        double size = nRe * nRe + nIm * nIm;
        double dRe = nRe / size;
        double dIm = -nIm / size;
        double oneRe = t21Re * dRe - t21Im * dIm;
        double oneIm = t21Re * dIm + t21Im * dRe;
        double twoRe = t22Re * dRe - t22Im * dIm;
        double twoIm = t22Re * dIm + t22Im * dRe;
        double xRe = sRe[pq][k];
        double xIm = sIm[pq][k];
        double yRe = sRe[qp][k];
        double yIm = sIm[qp][k];
        // What a wave in q sends into p behind the two-port: t22 D Spq.
        double backRe = twoRe * xRe - twoIm * xIm;
        double backIm = twoRe * xIm + twoIm * xRe;
        sRe[qq][k] += yRe * backRe - yIm * backIm;
        sIm[qq][k] += yRe * backIm + yIm * backRe;
        sRe[qp][k] = yRe * oneRe - yIm * oneIm;
        sIm[qp][k] = yRe * oneIm + yIm * oneRe;
        double inRe = spRe * oneRe - spIm * oneIm;
        double inIm = spRe * oneIm + spIm * oneRe;
        sRe[pp][k] = t11Re + t12Re * inRe - t12Im * inIm;
        sIm[pp][k] = t11Im + t12Re * inIm + t12Im * inRe;
        // t12 D Spq, with D = 1 + t22 D Spp.
        double outRe = dRe * xRe - dIm * xIm;
        double outIm = dRe * xIm + dIm * xRe;
        sRe[pq][k] = t12Re * outRe - t12Im * outIm;
        sIm[pq][k] = t12Re * outIm + t12Im * outRe;
        for (int row = 0; row < 2; row++) {
            double gRe = fRe[2 * row + p][k];
            double gIm = fIm[2 * row + p][k];
            fRe[2 * row + 1 - p][k] += gRe * backRe - gIm * backIm;
            fIm[2 * row + 1 - p][k] += gRe * backIm + gIm * backRe;
            fRe[2 * row + p][k] = gRe * oneRe - gIm * oneIm;
            fIm[2 * row + p][k] = gRe * oneIm + gIm * oneRe;
        }
    }

    /** Goes back through a length in which each of the two is a line by itself. */
    void through(ComplexArray first, ComplexArray second) {
        ComplexArray[] way = {first, second};
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 2; column++) {
                int at = 2 * row + column;
                multiply(sRe[at], sIm[at], way[row]);
                multiply(sRe[at], sIm[at], way[column]);
                multiply(fRe[at], fIm[at], way[column]);
            }
        }
    }

    private void multiply(double[] re, double[] im, ComplexArray by) {
        for (int k = 0; k < count; k++) {
            double was = re[k];
            re[k] = was * by.re(k) - im[k] * by.im(k);
            im[k] = was * by.im(k) + im[k] * by.re(k);
        }
    }
}

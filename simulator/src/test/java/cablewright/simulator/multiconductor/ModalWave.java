// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.line.Frequencies;

/**
 * The modes of a line at a list of frequencies: γ = √(z y) and the admittance y/γ of each, with z = sλ + r and y = s d c; real
 * parts of γ are 0 or more, so waves decay the way they go.
 */
final class ModalWave {

    private final Modes modes;
    private final double[][] gammaRe;
    private final double[][] gammaIm;
    private final double[][] admittanceRe;
    private final double[][] admittanceIm;

    ModalWave(CoupledLine line, Frequencies frequencies) {
        this.modes = line.modes();
        int n = frequencies.count();
        double[] sRe = frequencies.real();
        double[] sIm = frequencies.imaginary();
        double[][] loss = line.loss(sRe, sIm);
        gammaRe = new double[modes.count()][n];
        gammaIm = new double[modes.count()][n];
        admittanceRe = new double[modes.count()][n];
        admittanceIm = new double[modes.count()][n];
        for (int m = 0; m < modes.count(); m++) {
            for (int k = 0; k < n; k++) {
                double zRe = sRe[k] * modes.inductance(m) + loss[0][k];
                double zIm = sIm[k] * modes.inductance(m) + loss[1][k];
                double c = modes.capacitance(m);
                double yRe = c * (sRe[k] * loss[2][k] - sIm[k] * loss[3][k]);
                double yIm = c * (sRe[k] * loss[3][k] + sIm[k] * loss[2][k]);
                set(m, k, zRe, zIm, yRe, yIm);
            }
        }
    }

    /** Both z and y lie in the right half plane, so √z √y is the root that decays. */
    private void set(int m, int k, double zRe, double zIm, double yRe, double yIm) {
        double zSize = Math.hypot(zRe, zIm);
        double ySize = Math.hypot(yRe, yIm);
        double angleZ = Math.atan2(zIm, zRe) / 2;
        double angleY = Math.atan2(yIm, yRe) / 2;
        double gamma = Math.sqrt(zSize) * Math.sqrt(ySize);
        gammaRe[m][k] = Math.max(0, gamma * Math.cos(angleZ + angleY));
        gammaIm[m][k] = gamma * Math.sin(angleZ + angleY);
        double admittance = Math.sqrt(ySize) / Math.sqrt(zSize);
        admittanceRe[m][k] = admittance * Math.cos(angleY - angleZ);
        admittanceIm[m][k] = admittance * Math.sin(angleY - angleZ);
    }

    Modes modes() {
        return modes;
    }

    double admittanceRe(int mode, int k) {
        return admittanceRe[mode][k];
    }

    double admittanceIm(int mode, int k) {
        return admittanceIm[mode][k];
    }

    /** Real part of e^(−γl), imaginary part after it. */
    void decay(int mode, int k, double metres, double[] out) {
        double size = Math.exp(-gammaRe[mode][k] * metres);
        double angle = -gammaIm[mode][k] * metres;
        out[0] = size * Math.cos(angle);
        out[1] = size * Math.sin(angle);
    }
}

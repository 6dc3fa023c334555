// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

/**
 * Series impedance and shunt admittance per metre of cable on a set of complex frequencies. The arrays are fresh: who
 * asked for them owns them and may change them.
 */
public final class PrimaryConstants {

    private final double[] zRe;
    private final double[] zIm;
    private final double[] yRe;
    private final double[] yIm;

    /** Makes arrays for as many frequencies. */
    public PrimaryConstants(int size) {
        zRe = new double[size];
        zIm = new double[size];
        yRe = new double[size];
        yIm = new double[size];
    }

    /**
     * Series impedance, real parts.
     *
     * @return ohm/m
     */
    public double[] zRe() {
        return zRe;
    }

    /**
     * Series impedance, imaginary parts.
     *
     * @return ohm/m
     */
    public double[] zIm() {
        return zIm;
    }

    /**
     * Shunt admittance, real parts.
     *
     * @return S/m
     */
    public double[] yRe() {
        return yRe;
    }

    /**
     * Shunt admittance, imaginary parts.
     *
     * @return S/m
     */
    public double[] yIm() {
        return yIm;
    }

    /** z = s L. */
    void startWithInductance(ContourSamples contour, double henriesPerMetre) {
        scale(henriesPerMetre, contour.sRe(), zRe);
        scale(henriesPerMetre, contour.sIm(), zIm);
    }

    /** y = s C eps, with C the capacitance in vacuum. */
    void setCapacitance(ContourSamples contour, double faradsPerMetre, double[] epsRe, double[] epsIm) {
        double[] sRe = contour.sRe();
        double[] sIm = contour.sIm();
        for (int i = 0; i < yRe.length; i++) {
            yRe[i] = faradsPerMetre * (sRe[i] * epsRe[i] - sIm[i] * epsIm[i]);
            yIm[i] = faradsPerMetre * (sRe[i] * epsIm[i] + sIm[i] * epsRe[i]);
        }
    }

    /** y = C (s eps), with C the capacitance in vacuum. */
    void setCapacitance(double faradsPerMetre, Samples susceptance) {
        scale(faradsPerMetre, susceptance.re, yRe);
        scale(faradsPerMetre, susceptance.im, yIm);
    }

    private static void scale(double factor, double[] from, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] = factor * from[i];
        }
    }

    /** Multiplies both by the length of conductor in a metre of cable. */
    void lengthen(double factor) {
        if (factor == 1) {
            return;
        }
        scale(factor, zRe, zRe);
        scale(factor, zIm, zIm);
        scale(factor, yRe, yRe);
        scale(factor, yIm, yIm);
    }
}

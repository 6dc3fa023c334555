// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.kernel;

/** e^(a + jb) into an array of two; and a few products of such pairs. */
public final class ComplexExp {

    private ComplexExp() {}

    /** Computes e^(re + j im). @param re real part @param im imaginary part @param out receives both parts */
    public static void exp(double re, double im, double[] out) {
        double size = Math.exp(re);
        out[0] = size * Math.cos(im);
        out[1] = size * Math.sin(im);
    }

    /** Divides two complex numbers; out receives both parts. */
    public static void divide(double nRe, double nIm, double dRe, double dIm, double[] out) {
        double size = dRe * dRe + dIm * dIm;
        out[0] = (nRe * dRe + nIm * dIm) / size;
        out[1] = (nIm * dRe - nRe * dIm) / size;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import java.util.Arrays;

/** A product of complex factors at each of a list of frequencies, multiplied up one factor at a time. */
public final class RunningProduct {

    private final double[] re;
    private final double[] im;

    /** Starts with 1 at every frequency. */
    public RunningProduct(int count) {
        re = new double[count];
        im = new double[count];
        Arrays.fill(re, 1);
    }

    public int count() {
        return re.length;
    }

    public double re(int i) {
        return re[i];
    }

    public double im(int i) {
        return im[i];
    }

    /** Multiplies by n/d; a d of zero stands for a wave that goes no further, and makes the product zero. */
    void timesFraction(int i, double nRe, double nIm, double dRe, double dIm) {
        double size = dRe * dRe + dIm * dIm;
        if (size == 0) {
            re[i] = 0;
            im[i] = 0;
            return;
        }
        times(i, (nRe * dRe + nIm * dIm) / size, (nIm * dRe - nRe * dIm) / size);
    }

    /** Multiplies one value by a complex factor. */
    public void times(int i, double factorRe, double factorIm) {
        double product = re[i] * factorRe - im[i] * factorIm;
        im[i] = re[i] * factorIm + im[i] * factorRe;
        re[i] = product;
    }

    /** Multiplies one value by a fraction. */
    public void times(double factor) {
        for (int i = 0; i < re.length; i++) {
            re[i] *= factor;
            im[i] *= factor;
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.kernel;

import java.util.Arrays;

/**
 * Complex values at a list of frequencies that change in place: the workspace of every solver. Each method is one short loop
 * over {@code double[]}, which the compiler turns into vector instructions; a long loop it would leave as it is. With
 * {@value #LENGTH} values the blocks of one section of line stay in the first-level cache.
 *
 * <p>Methods change this block and return it, so that a law reads as one line. An argument may be this block itself. For one
 * thread at a time.
 */
public final class ComplexBlock {

    /** Values in a block of a long list. */
    public static final int LENGTH = 256;

    private final double[] re;
    private final double[] im;

    /** Makes a block of zeros. */
    public ComplexBlock(int count) {
        this(new double[count], new double[count]);
    }

    /** Takes over two arrays of equal length without copying. */
    public ComplexBlock(double[] real, double[] imaginary) {
        if (real.length != imaginary.length) {
            throw new IllegalArgumentException(
                    "real has " + real.length + " and imaginary " + imaginary.length + " entries; they must match");
        }
        this.re = real;
        this.im = imaginary;
    }

    public int count() {
        return re.length;
    }

    /** The real parts themselves, not a copy. */
    public double[] real() {
        return re;
    }

    /** The imaginary parts themselves, not a copy. */
    public double[] imaginary() {
        return im;
    }

    public double re(int k) {
        return re[k];
    }

    public double im(int k) {
        return im[k];
    }

    public double magnitude(int k) {
        return Math.hypot(re[k], im[k]);
    }

    /** Sets one value. */
    public void put(int k, double real, double imaginary) {
        re[k] = real;
        im[k] = imaginary;
    }

    /** Returns a copy that never changes. */
    public ComplexArray copy() {
        return ComplexArray.takingOver(re.clone(), im.clone());
    }

    /** Sets all values to one real number. */
    public ComplexBlock fill(double real) {
        Arrays.fill(re, real);
        Arrays.fill(im, 0);
        return this;
    }

    /** this = a. */
    public ComplexBlock set(ComplexBlock a) {
        System.arraycopy(a.re, 0, re, 0, re.length);
        System.arraycopy(a.im, 0, im, 0, im.length);
        return this;
    }

    /** this = a. */
    public ComplexBlock set(ComplexArray a) {
        a.copyTo(re, im);
        return this;
    }

    /** this = factor · a. */
    public ComplexBlock setScaled(ComplexBlock a, double factor) {
        scaled(re, a.re, factor);
        scaled(im, a.im, factor);
        return this;
    }

    private static void scaled(double[] to, double[] a, double factor) {
        for (int k = 0; k < to.length; k++) {
            to[k] = factor * a[k];
        }
    }

    /** this = a + b. */
    public ComplexBlock setSum(ComplexBlock a, ComplexBlock b) {
        sum(re, a.re, b.re);
        sum(im, a.im, b.im);
        return this;
    }

    private static void sum(double[] to, double[] a, double[] b) {
        for (int k = 0; k < to.length; k++) {
            to[k] = a[k] + b[k];
        }
    }

    /** this + a. */
    public ComplexBlock plus(ComplexBlock a) {
        return plus(1, a);
    }

    /** this − a. */
    public ComplexBlock minus(ComplexBlock a) {
        return plus(-1, a);
    }

    /** this + factor · a. */
    public ComplexBlock plus(double factor, ComplexBlock a) {
        add(re, a.re, factor);
        add(im, a.im, factor);
        return this;
    }

    private static void add(double[] to, double[] a, double factor) {
        for (int k = 0; k < to.length; k++) {
            to[k] += factor * a[k];
        }
    }

    /** this + a real number. */
    public ComplexBlock plus(double real) {
        if (real != 0) {
            for (int k = 0; k < re.length; k++) {
                re[k] += real;
            }
        }
        return this;
    }

    /** factor · this. */
    public ComplexBlock times(double factor) {
        return setScaled(this, factor);
    }

    /** this · a. */
    public ComplexBlock times(ComplexBlock a) {
        return setProduct(this, a);
    }

    /** this = a · b. */
    public ComplexBlock setProduct(ComplexBlock a, ComplexBlock b) {
        double[] aRe = a.re;
        double[] aIm = a.im;
        double[] bRe = b.re;
        double[] bIm = b.im;
        for (int k = 0; k < re.length; k++) {
            double real = aRe[k] * bRe[k] - aIm[k] * bIm[k];
            im[k] = aRe[k] * bIm[k] + aIm[k] * bRe[k];
            re[k] = real;
        }
        return this;
    }

    /** this + a · b; neither may be this block. */
    public ComplexBlock plusProduct(ComplexBlock a, ComplexBlock b) {
        double[] aRe = a.re;
        double[] aIm = a.im;
        double[] bRe = b.re;
        double[] bIm = b.im;
        for (int k = 0; k < re.length; k++) {
            re[k] += aRe[k] * bRe[k] - aIm[k] * bIm[k];
            im[k] += aRe[k] * bIm[k] + aIm[k] * bRe[k];
        }
        return this;
    }

    /** this = 1 − a. */
    public ComplexBlock setOneMinus(ComplexBlock a) {
        return setOnePlus(a, -1);
    }

    /** this = 1 + sign · a. */
    public ComplexBlock setOnePlus(ComplexBlock a, int sign) {
        for (int k = 0; k < re.length; k++) {
            re[k] = 1 + sign * a.re[k];
        }
        for (int k = 0; k < im.length; k++) {
            im[k] = sign * a.im[k];
        }
        return this;
    }

    /** this/a; not a number where a is zero. */
    public ComplexBlock over(ComplexBlock a) {
        return setQuotient(this, a);
    }

    /** this = n/d; not a number where d is zero. */
    public ComplexBlock setQuotient(ComplexBlock n, ComplexBlock d) {
        double[] nRe = n.re;
        double[] nIm = n.im;
        double[] dRe = d.re;
        double[] dIm = d.im;
        for (int k = 0; k < re.length; k++) {
            double scale = 1 / (dRe[k] * dRe[k] + dIm[k] * dIm[k]);
            double real = scale * (nRe[k] * dRe[k] + nIm[k] * dIm[k]);
            im[k] = scale * (nIm[k] * dRe[k] - nRe[k] * dIm[k]);
            re[k] = real;
        }
        return this;
    }

    /** this = (a − b)/(a + b); neither may be this block. */
    public ComplexBlock setDifferenceOverSum(ComplexBlock a, ComplexBlock b) {
        double[] aRe = a.re;
        double[] aIm = a.im;
        double[] bRe = b.re;
        double[] bIm = b.im;
        for (int k = 0; k < re.length; k++) {
            double sRe = aRe[k] + bRe[k];
            double sIm = aIm[k] + bIm[k];
            re[k] = 1 / (sRe * sRe + sIm * sIm);
        }
        for (int k = 0; k < im.length; k++) {
            im[k] = re[k] * ((aIm[k] - bIm[k]) * (aRe[k] + bRe[k]) - (aRe[k] - bRe[k]) * (aIm[k] + bIm[k]));
        }
        for (int k = 0; k < re.length; k++) {
            re[k] *= (aRe[k] - bRe[k]) * (aRe[k] + bRe[k]) + (aIm[k] - bIm[k]) * (aIm[k] + bIm[k]);
        }
        return this;
    }

    /** Sets the values to zero at which another block is zero. */
    public ComplexBlock zeroWhereZero(ComplexBlock a) {
        return putWhereZero(a, 0);
    }

    /** Sets the values to a real number at which another block is zero. */
    public ComplexBlock putWhereZero(ComplexBlock a, double real) {
        for (int k = 0; k < re.length; k++) {
            if (a.re[k] == 0 && a.im[k] == 0) {
                re[k] = real;
                im[k] = 0;
            }
        }
        return this;
    }

    /**
     * this = √a for values in the right half plane, where the principal root loses no digits: p² = (|a| + Re a)/2, and the
     * imaginary part is Im a/(2p).
     */
    public ComplexBlock setRoot(double[] aRe, double[] aIm) {
        for (int k = 0; k < re.length; k++) {
            re[k] = Math.sqrt(0.5 * (Math.sqrt(aRe[k] * aRe[k] + aIm[k] * aIm[k]) + aRe[k]));
        }
        for (int k = 0; k < im.length; k++) {
            im[k] = 0.5 * aIm[k] / re[k];
        }
        return this;
    }
}

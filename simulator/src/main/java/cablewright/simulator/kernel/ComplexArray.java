// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.kernel;

/**
 * Complex values at a list of frequencies, real and imaginary parts in arrays of their own. Immutable in use: the arrays
 * are owned by this object, read by {@link #re} and {@link #im}.
 */
public final class ComplexArray {

    private final double[] real;
    private final double[] imaginary;

    private ComplexArray(double[] real, double[] imaginary) {
        if (real.length != imaginary.length) {
            throw new IllegalArgumentException(
                    "real has " + real.length + " and imaginary " + imaginary.length + " entries; they must match");
        }
        this.real = real;
        this.imaginary = imaginary;
    }

    /**
     * Takes over two arrays without copying; the caller must not write to them afterwards.
     *
     * @param real real parts
     * @param imaginary imaginary parts, same length
     * @return the values
     */
    public static ComplexArray takingOver(double[] real, double[] imaginary) {
        return new ComplexArray(real, imaginary);
    }

    /**
     * Returns how many values there are.
     *
     * @return number of values
     */
    public int count() {
        return real.length;
    }

    /**
     * Returns a real part.
     *
     * @param k index, from 0
     * @return the real part
     */
    public double re(int k) {
        return real[k];
    }

    /**
     * Returns an imaginary part.
     *
     * @param k index, from 0
     * @return the imaginary part
     */
    public double im(int k) {
        return imaginary[k];
    }

    /**
     * Returns a magnitude.
     *
     * @param k index, from 0
     * @return the magnitude
     */
    public double magnitude(int k) {
        return Math.hypot(real[k], imaginary[k]);
    }

    /**
     * Returns all real parts.
     *
     * @return a fresh copy
     */
    public double[] copyOfReal() {
        return real.clone();
    }

    /**
     * Returns all imaginary parts.
     *
     * @return a fresh copy
     */
    public double[] copyOfImaginary() {
        return imaginary.clone();
    }

    /** Copies the values into two arrays that are no longer. */
    void copyTo(double[] re, double[] im) {
        System.arraycopy(real, 0, re, 0, re.length);
        System.arraycopy(imaginary, 0, im, 0, im.length);
    }

    /**
     * Multiplies, value by value, as far as both go.
     *
     * @param other the other values
     * @return the products
     */
    public ComplexArray times(ComplexArray other) {
        double[] re = new double[Math.min(count(), other.count())];
        double[] im = new double[re.length];
        for (int k = 0; k < re.length; k++) {
            re[k] = real[k] * other.real[k] - imaginary[k] * other.imaginary[k];
            im[k] = real[k] * other.imaginary[k] + imaginary[k] * other.real[k];
        }
        return new ComplexArray(re, im);
    }
}

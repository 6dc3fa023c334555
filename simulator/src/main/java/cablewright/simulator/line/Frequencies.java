// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import java.util.Arrays;

/**
 * A list of complex frequencies s at which a line is asked about: on a damped contour for answers in time, or s = jω for
 * a sweep. Compared by content.
 */
public final class Frequencies {

    private final double[] real;
    private final double[] imaginary;
    private final int hash;

    /**
     * Takes frequencies; the arrays are copied.
     *
     * @param real real parts [1/s], each 0 or more
     * @param imaginary imaginary parts [rad/s], same length
     */
    public Frequencies(double[] real, double[] imaginary) {
        if (real.length != imaginary.length || real.length == 0) {
            throw new IllegalArgumentException("real has " + real.length + " and imaginary " + imaginary.length
                    + " entries; they must be equally many, at least one");
        }
        for (int k = 0; k < real.length; k++) {
            boolean finite = Double.isFinite(real[k]) && Double.isFinite(imaginary[k]);
            if (!finite || real[k] < 0 || (real[k] == 0 && imaginary[k] == 0)) {
                throw new IllegalArgumentException("frequency " + k + " is " + real[k] + " + j" + imaginary[k]
                        + "; it must be finite, not zero, with no negative real part");
            }
        }
        this.real = real.clone();
        this.imaginary = imaginary.clone();
        this.hash = 31 * Arrays.hashCode(real) + Arrays.hashCode(imaginary);
    }

    /**
     * Makes the frequencies of a sweep.
     *
     * @param hertz frequencies [Hz], above 0
     * @return s = j2πf
     */
    public static Frequencies ofSweep(double... hertz) {
        return new Frequencies(
                new double[hertz.length],
                Arrays.stream(hertz).map(f -> 2 * Math.PI * f).toArray());
    }

    public int count() {
        return real.length;
    }

    /**
     * Returns the real parts.
     *
     * @return a fresh copy [1/s]
     */
    public double[] real() {
        return real.clone();
    }

    /**
     * Returns the imaginary parts.
     *
     * @return a fresh copy [rad/s]
     */
    public double[] imaginary() {
        return imaginary.clone();
    }

    /**
     * Takes some of them.
     *
     * @param from index of the first to take
     * @param to index after the last to take
     * @return the frequencies between
     */
    public Frequencies slice(int from, int to) {
        return new Frequencies(Arrays.copyOfRange(real, from, to), Arrays.copyOfRange(imaginary, from, to));
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof Frequencies)) {
            return false;
        }
        Frequencies that = (Frequencies) other;
        return hash == that.hash && Arrays.equals(real, that.real) && Arrays.equals(imaginary, that.imaginary);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}

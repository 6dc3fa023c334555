// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

/** Evenly spaced samples of a function of time, the first at t = 0. */
public final class Waveform {

    private final double sampleSeconds;
    private final double[] values;

    /**
     * Takes samples; the array is copied.
     *
     * @param sampleSeconds distance of samples [s]
     * @param values the samples
     */
    public Waveform(double sampleSeconds, double[] values) {
        if (!(sampleSeconds > 0)) {
            throw new IllegalArgumentException("sampleSeconds is " + sampleSeconds + "; it must be greater than 0");
        }
        this.sampleSeconds = sampleSeconds;
        this.values = values.clone();
    }

    /**
     * Returns the distance of samples.
     *
     * @return distance [s]
     */
    public double sampleSeconds() {
        return sampleSeconds;
    }

    /**
     * Returns how many samples there are.
     *
     * @return number of samples
     */
    public int count() {
        return values.length;
    }

    /**
     * Returns a sample.
     *
     * @param index which, from 0
     * @return its value
     */
    public double sample(int index) {
        return values[index];
    }

    /**
     * Returns when a sample was taken.
     *
     * @param index which, from 0
     * @return time [s]
     */
    public double time(int index) {
        return index * sampleSeconds;
    }

    /**
     * Returns the value at any time, on the straight line between samples; the end values outside of them.
     *
     * @param seconds time [s]
     * @return the value
     */
    public double at(double seconds) {
        double place = seconds / sampleSeconds;
        if (place <= 0) {
            return values[0];
        }
        int before = (int) place;
        if (before >= values.length - 1) {
            return values[values.length - 1];
        }
        double share = place - before;
        return (1 - share) * values[before] + share * values[before + 1];
    }

    /**
     * Returns all samples.
     *
     * @return a fresh copy
     */
    public double[] copyOfValues() {
        return values.clone();
    }
}

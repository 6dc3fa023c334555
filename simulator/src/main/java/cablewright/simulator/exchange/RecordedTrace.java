// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.wave.Waveform;
import java.util.Arrays;

/**
 * A trace from a file: voltages in order of time, or of distance at a velocity that the file does not tell.
 */
public final class RecordedTrace {

    /** Most samples that are read or laid. */
    public static final int MOST_SAMPLES = 1 << 20;

    private final boolean byTime;
    private final double[] places;
    private final double[] volts;
    private final String valueColumn;

    RecordedTrace(boolean byTime, double[] places, double[] volts, String valueColumn) {
        this.byTime = byTime;
        this.places = places;
        this.volts = volts;
        this.valueColumn = valueColumn;
    }

    /**
     * Returns whether the file gives times.
     *
     * @return whether places are times [s]; otherwise they are distances [m]
     */
    public boolean isByTime() {
        return byTime;
    }

    /**
     * Returns the name of the column from which the voltages came.
     *
     * @return its name, empty if the file has none
     */
    public String valueColumn() {
        return valueColumn;
    }

    public int count() {
        return places.length;
    }

    /**
     * Returns a place.
     *
     * @param index which, from 0
     * @return time [s] or distance [m], rising
     */
    public double place(int index) {
        return places[index];
    }

    /**
     * Returns a voltage.
     *
     * @param index which, from 0
     * @return voltage [V]
     */
    public double volts(int index) {
        return volts[index];
    }

    /**
     * Returns when the first sample was taken.
     *
     * @param velocityFraction velocity by which distances become times there and back, over that of light; above 0 to 1
     * @return time [s]
     */
    public double firstSeconds(double velocityFraction) {
        return places[0] * secondsPerPlace(velocityFraction);
    }

    private double secondsPerPlace(double velocityFraction) {
        if (byTime) {
            return 1;
        }
        if (!(velocityFraction > 0 && velocityFraction <= 1)) {
            throw new IllegalArgumentException(
                    "velocityFraction is " + velocityFraction + "; it must be above 0 and at most 1");
        }
        return 2 / (velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND);
    }

    /**
     * Lays the samples at even times, on straight lines between those of the file, as close as its closest two.
     *
     * @param velocityFraction velocity by which distances become times there and back, over that of light; it counts only
     *     where the file gives distances
     * @return the samples from the first time of the file on; its own where they are even already
     */
    public Waveform evenly(double velocityFraction) {
        double scale = secondsPerPlace(velocityFraction);
        double step = Double.POSITIVE_INFINITY;
        for (int i = 1; i < places.length; i++) {
            step = Math.min(step, places[i] - places[i - 1]);
        }
        double whole = places[places.length - 1] - places[0];
        if (isEven(whole / (places.length - 1))) {
            return new Waveform(scale * whole / (places.length - 1), volts);
        }
        int count = (int) Math.min(MOST_SAMPLES, Math.floor(whole / step * (1 + 1e-9)) + 1);
        step = whole / (count - 1);
        double[] even = new double[count];
        int before = 0;
        for (int i = 0; i < count; i++) {
            double place = places[0] + i * step;
            while (before + 2 < places.length && places[before + 1] < place) {
                before++;
            }
            double share = (place - places[before]) / (places[before + 1] - places[before]);
            even[i] = volts[before] + Math.min(1, share) * (volts[before + 1] - volts[before]);
        }
        return new Waveform(scale * step, even);
    }

    private boolean isEven(double mean) {
        for (int i = 0; i < places.length; i++) {
            if (Math.abs(places[i] - places[0] - i * mean) > 1e-6 * mean) {
                return false;
            }
        }
        return true;
    }

    @Override
    public String toString() {
        return "RecordedTrace of " + count() + (byTime ? " times " : " distances ")
                + Arrays.toString(new double[] {places[0], places[places.length - 1]});
    }
}

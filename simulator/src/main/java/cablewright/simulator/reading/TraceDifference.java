// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Trace;
import java.util.OptionalDouble;

/**
 * The difference of two traces of the same pulse: before and after, or a good pair and a doubtful one.
 *
 * <p>The second is read at the times of the first's samples, both counted from where the outgoing edge is at half height,
 * by a cubic through its four nearest samples (Catmull–Rom), which moves nothing. Noise of the two adds as squares.
 */
public final class TraceDifference {

    private final Trace first;
    private final double[] volts;
    private final double noiseVolts;

    private TraceDifference(Trace first, double[] volts, double noiseVolts) {
        this.first = first;
        this.volts = volts;
        this.noiseVolts = noiseVolts;
    }

    /**
     * Takes one trace from another.
     *
     * @param second the trace to look at
     * @param first the trace to compare it with
     * @return second less first, at the samples of the first, as far as both reach
     * @throws IllegalArgumentException if the outgoing waves differ, since then even equal lines give unequal traces
     */
    public static TraceDifference of(Trace second, Trace first) {
        if (!second.settings().stimulus().equals(first.settings().stimulus())) {
            throw new IllegalArgumentException("the traces were taken with different pulses, "
                    + first.settings().stimulus() + " and " + second.settings().stimulus()
                    + "; take both with the same one");
        }
        double[] volts = new double[first.count()];
        int count = 0;
        for (int i = 0; i < volts.length; i++) {
            double place = (first.seconds(i) + second.zeroSeconds()) / second.sampleSeconds();
            if (place <= second.count() - 1.0) {
                volts[i] = valueAt(second, place) - first.volts(i);
                count = i + 1;
            }
        }
        double[] both = new double[count];
        System.arraycopy(volts, 0, both, 0, count);
        return new TraceDifference(first, both, Math.hypot(first.noiseVolts(), second.noiseVolts()));
    }

    private static double valueAt(Trace trace, double place) {
        int before = (int) Math.floor(place);
        double u = place - before;
        double b = sample(trace, before);
        if (u == 0) {
            return b;
        }
        double a = sample(trace, before - 1);
        double c = sample(trace, before + 1);
        double d = sample(trace, before + 2);
        return b + u / 2 * (c - a + u * (2 * a - 5 * b + 4 * c - d + u * (3 * (b - c) + d - a)));
    }

    private static double sample(Trace trace, int index) {
        return trace.volts(Math.max(0, Math.min(trace.count() - 1, index)));
    }

    /**
     * Returns how many samples there are.
     *
     * @return number of samples
     */
    public int count() {
        return volts.length;
    }

    /**
     * Returns the difference at a sample.
     *
     * @param index which, from 0
     * @return second less first [V]
     */
    public double volts(int index) {
        return volts[index];
    }

    /**
     * Returns the distance of a sample.
     *
     * @param index which, from 0
     * @return distance at the first trace's set velocity [m]
     */
    public double metres(int index) {
        return first.metres(index);
    }

    /**
     * Returns the noise of the difference.
     *
     * @return root mean square [V]
     */
    public double noiseVolts() {
        return noiseVolts;
    }

    /**
     * Finds where the two lines part: what comes after depends on what came before, so that only the first difference is
     * sure to be a difference of the lines at that place.
     *
     * @param timesNoise how far above the noise a difference must stand, above 0; 5 lets noise pass once in 1.7 million
     *     samples (normal distribution)
     * @return distance of the first sample that does [m]; empty where none does
     */
    public OptionalDouble firstMetres(double timesNoise) {
        Require.above("timesNoise", timesNoise, 0);
        for (int i = 0; i < volts.length; i++) {
            if (Math.abs(volts[i]) > timesNoise * noiseVolts) {
                return OptionalDouble.of(metres(i));
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * Returns the largest difference.
     *
     * @return the sample that differs most, as a cursor
     */
    public Cursor largest() {
        int most = 0;
        for (int i = 1; i < volts.length; i++) {
            most = Math.abs(volts[i]) > Math.abs(volts[most]) ? i : most;
        }
        return new Cursor(metres(most), first.seconds(most), volts[most]);
    }

    /**
     * Returns all differences.
     *
     * @return a fresh copy [V]
     */
    public double[] copyOfVolts() {
        return volts.clone();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.instrument.Trace;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Points to draw a line through, in order. Immutable; what x and y are is said by whoever hands it out. */
public final class Curve {

    private final double[] x;
    private final double[] y;

    /**
     * Takes points; the arrays are copied.
     *
     * @param x across
     * @param y up, as many
     */
    public Curve(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(
                    "x has " + x.length + " values and y has " + y.length + "; they must be equally many");
        }
        this.x = x.clone();
        this.y = y.clone();
    }

    /**
     * Draws a function at evenly spaced places.
     *
     * @param from first place
     * @param to last place
     * @param count how many, 2 or more
     * @param function the function
     * @return the curve
     */
    public static Curve of(double from, double to, int count, DoubleUnaryOperator function) {
        double[] x = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = from + (to - from) * i / (count - 1);
        }
        return new Curve(x, Arrays.stream(x).map(function).toArray());
    }

    /**
     * Draws a trace.
     *
     * @param trace the trace
     * @return voltage for an outgoing wave of 1 V [V] against distance at the set velocity [m]
     */
    public static Curve of(Trace trace) {
        double[] metres = new double[trace.count()];
        for (int i = 0; i < metres.length; i++) {
            metres[i] = trace.metres(i);
        }
        return new Curve(metres, trace.copyOfVolts());
    }

    /**
     * Returns how many points there are.
     *
     * @return number of points
     */
    public int count() {
        return x.length;
    }

    /**
     * Returns a place.
     *
     * @param index which point, from 0
     * @return x
     */
    public double x(int index) {
        return x[index];
    }

    /**
     * Returns a height.
     *
     * @param index which point, from 0
     * @return y
     */
    public double y(int index) {
        return y[index];
    }

    /**
     * Returns the height at a place, on the straight line between points; the end values outside of them.
     *
     * @param place x, of a curve whose x rises
     * @return y
     */
    public double at(double place) {
        int found = Arrays.binarySearch(x, place);
        if (found >= 0) {
            return y[found];
        }
        int after = -found - 1;
        if (after == 0) {
            return y[0];
        }
        if (after == x.length) {
            return y[x.length - 1];
        }
        double share = (place - x[after - 1]) / (x[after] - x[after - 1]);
        return (1 - share) * y[after - 1] + share * y[after];
    }

    /**
     * Returns where the curve is farthest from 0 within a stretch.
     *
     * @param from least x
     * @param to greatest x
     * @return index of the point; −1 where no point lies within
     */
    public int largestBetween(double from, double to) {
        int found = -1;
        for (int i = 0; i < x.length; i++) {
            if (x[i] >= from && x[i] <= to && (found < 0 || Math.abs(y[i]) > Math.abs(y[found]))) {
                found = i;
            }
        }
        return found;
    }

    /**
     * Takes another curve of the same places off this one.
     *
     * @param other the other curve
     * @return the difference
     */
    public Curve minus(Curve other) {
        if (!Arrays.equals(x, other.x)) {
            throw new IllegalArgumentException("the curves have different places; both must have the same x");
        }
        double[] difference = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            difference[i] = y[i] - other.y[i];
        }
        return new Curve(x, difference);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import cablewright.simulator.instrument.Trace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * What is left of a long curve in a narrow picture: of all points in a column its lowest and its highest, in their order, so
 * that no peak is lost; at most two points a column, and one where the curve enters and leaves the picture.
 */
public final class ReducedCurve {

    private final double[] x;
    private final double[] value;
    private int count;

    private ReducedCurve(int most) {
        x = new double[most];
        value = new double[most];
    }

    /**
     * Reduces a trace to columns of one pixel.
     *
     * @param trace the trace; its values are shares of the outgoing wave
     * @param view which distances are on which pixels
     * @return the points that are drawn
     */
    public static ReducedCurve of(Trace trace, DistanceView view) {
        return of(trace, view, 1);
    }

    /**
     * Reduces a trace.
     *
     * @param trace the trace; its values are shares of the outgoing wave
     * @param view which distances are where
     * @param columns columns for each unit across
     * @return the points that are drawn
     */
    public static ReducedCurve of(Trace trace, DistanceView view, double columns) {
        return of(
                trace.count(),
                i -> view.pixel(trace.metres(i)),
                trace::volts,
                view.leftPixels(),
                view.rightPixels(),
                columns);
    }

    /**
     * Reduces a curve.
     *
     * @param points how many points it has, 1 or more
     * @param place where each is across, rising
     * @param height how high each is, in any unit
     * @param left left edge of the picture
     * @param right right edge of the picture
     * @param columns columns for each unit across
     * @return the points that are drawn
     */
    public static ReducedCurve of(
            int points,
            IntToDoubleFunction place,
            IntToDoubleFunction height,
            double left,
            double right,
            double columns) {
        int from = firstFrom(points, place, left);
        int end = from;
        while (end < points && place.applyAsDouble(end) <= right) {
            end++;
        }
        ReducedCurve curve = new ReducedCurve(2 * Math.min(end - from, (int) ((right - left) * columns) + 2) + 4);
        if (from > 0 && from < points && place.applyAsDouble(from) > left) {
            curve.cross(left, from, place, height);
        }
        int next = from;
        while (next < end) {
            next = curve.column(next, end, place, height, columns);
        }
        if (end > 0 && end < points && place.applyAsDouble(end - 1) < right) {
            curve.cross(right, end, place, height);
        }
        return curve;
    }

    private static int firstFrom(int points, IntToDoubleFunction place, double left) {
        int low = 0;
        int high = points;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (place.applyAsDouble(middle) < left) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The place where the curve crosses an edge on its way to a point. */
    private void cross(double edge, int to, IntToDoubleFunction place, IntToDoubleFunction height) {
        double before = place.applyAsDouble(to - 1);
        double share = (edge - before) / (place.applyAsDouble(to) - before);
        double low = height.applyAsDouble(to - 1);
        add(edge, low + share * (height.applyAsDouble(to) - low));
    }

    private int column(int from, int end, IntToDoubleFunction place, IntToDoubleFunction height, double columns) {
        double column = Math.floor(place.applyAsDouble(from) * columns);
        int least = from;
        int most = from;
        int next = from + 1;
        while (next < end && place.applyAsDouble(next) * columns < column + 1) {
            least = height.applyAsDouble(next) < height.applyAsDouble(least) ? next : least;
            most = height.applyAsDouble(next) > height.applyAsDouble(most) ? next : most;
            next++;
        }
        int first = Math.min(least, most);
        int second = Math.max(least, most);
        add(place.applyAsDouble(first), height.applyAsDouble(first));
        if (second != first) {
            add(place.applyAsDouble(second), height.applyAsDouble(second));
        }
        return next;
    }

    private void add(double across, double high) {
        x[count] = across;
        value[count++] = high;
    }

    /**
     * Returns the number of points.
     *
     * @return 0 where the picture shows nothing of the curve
     */
    public int count() {
        return count;
    }

    /**
     * Returns where a point is.
     *
     * @param index which, from 0
     * @return its place across
     */
    public double x(int index) {
        return x[index];
    }

    /**
     * Returns how high a point is.
     *
     * @param index which, from 0
     * @return its height, in the unit of the curve
     */
    public double value(int index) {
        return value[index];
    }

    /**
     * Returns where the points are.
     *
     * @return their places across
     */
    public double[] xs() {
        return Arrays.copyOf(x, count);
    }

    /**
     * Returns where the points are.
     *
     * @param toY from the unit of the curve to a place down
     * @return their places down
     */
    public double[] ys(DoubleUnaryOperator toY) {
        return Arrays.stream(value, 0, count).map(toY).toArray();
    }

    /**
     * A part of the curve.
     *
     * @param from where it begins
     * @param to where it ends
     */
    public record Stretch(double from, double to) {}

    /**
     * Finds where the curve is at a level or above it.
     *
     * @param level the level, in the unit of the curve
     * @return the stretches from left to right
     */
    public List<Stretch> above(double level) {
        return stretches(i -> value[i] >= level);
    }

    /**
     * Finds where the curve is at a level or below it.
     *
     * @param level the level, in the unit of the curve
     * @return the stretches from left to right
     */
    public List<Stretch> below(double level) {
        return stretches(i -> value[i] <= level);
    }

    private List<Stretch> stretches(java.util.function.IntPredicate isIn) {
        List<Stretch> stretches = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= count; i++) {
            boolean inside = i < count && isIn.test(i);
            if (inside && from < 0) {
                from = i;
            } else if (!inside && from >= 0) {
                stretches.add(new Stretch(x[from], x[i - 1]));
                from = -1;
            }
        }
        return stretches;
    }
}

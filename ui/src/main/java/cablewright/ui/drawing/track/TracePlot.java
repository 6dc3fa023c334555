// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.words.LengthUnit;
import java.util.List;

/**
 * What a picture of a trace shows: a curve over distance, and lettered flags that stand on it. Nothing here knows pixels
 * or characters.
 */
public final class TracePlot {

    private final String title;
    private final String note;
    private final LengthUnit unit;
    private final double[] x;
    private final double[] percent;
    private final Window window;
    private final List<FlagMarker> flags;

    /**
     * The part of the plane that is shown.
     *
     * @param left least x
     * @param right greatest x, above {@code left}
     * @param bottom least height [%]
     * @param top greatest height [%], above {@code bottom}
     */
    public record Window(double left, double right, double bottom, double top) {
        /** Refuses a window without extent. */
        public Window {
            if (!(left < right) || !(bottom < top)) {
                throw new IllegalArgumentException("the window from " + left + " to " + right + " and " + bottom
                        + " to " + top + " shows nothing; its ends must differ");
            }
        }
    }

    /**
     * Makes a plot.
     *
     * @param title what is shown
     * @param note how it was taken; may be empty
     * @param unit unit of distance
     * @param x distances, rising; copied
     * @param percent heights [% of the outgoing wave], one for each distance; copied
     * @param window what is shown of it
     * @param flags flags that stand on it, at distances in metres
     */
    public TracePlot(
            String title,
            String note,
            LengthUnit unit,
            double[] x,
            double[] percent,
            Window window,
            List<FlagMarker> flags) {
        if (x.length != percent.length || x.length < 2) {
            throw new IllegalArgumentException("there are " + x.length + " distances and " + percent.length
                    + " heights; a curve needs at least 2 of both, as many of one as of the other");
        }
        this.title = title;
        this.note = note;
        this.unit = unit;
        this.x = x.clone();
        this.percent = percent.clone();
        this.window = window;
        this.flags = List.copyOf(flags);
    }

    /**
     * Chooses a window that shows a stretch of a curve whole, with a little room above and below, and the zero line.
     *
     * @param x distances
     * @param percent heights
     * @param left least x shown
     * @param right greatest x shown
     * @return the window
     */
    public static Window windowAround(double[] x, double[] percent, double left, double right) {
        double least = 0;
        double most = 0;
        for (int i = 0; i < x.length; i++) {
            if (x[i] >= left && x[i] <= right) {
                least = Math.min(least, percent[i]);
                most = Math.max(most, percent[i]);
            }
        }
        double room = Math.max(0.08 * (most - least), 1e-3);
        return new Window(left, right, least - room, most + room);
    }

    /**
     * Returns what is shown.
     *
     * @return a few words
     */
    public String title() {
        return title;
    }

    /**
     * Returns how it was taken.
     *
     * @return a line of settings, or nothing
     */
    public String note() {
        return note;
    }

    /**
     * Returns the unit of distance.
     *
     * @return the unit
     */
    public LengthUnit unit() {
        return unit;
    }

    /**
     * Returns how many points the curve has.
     *
     * @return 2 or more
     */
    public int count() {
        return x.length;
    }

    /**
     * Returns where a point is.
     *
     * @param index which, from 0
     * @return its distance
     */
    public double x(int index) {
        return x[index];
    }

    /**
     * Returns how high a point is.
     *
     * @param index which, from 0
     * @return its height [%]
     */
    public double percent(int index) {
        return percent[index];
    }

    /**
     * Returns what part of the plane is shown.
     *
     * @return the window
     */
    public Window window() {
        return window;
    }

    /**
     * Returns the flags.
     *
     * @return flags in their order
     */
    public List<FlagMarker> flags() {
        return flags;
    }
}

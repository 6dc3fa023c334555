// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.drawing.track.TracePlot.Flag;
import cablewright.ui.drawing.track.TracePlot.Window;
import cablewright.ui.words.Quantities;
import java.util.Arrays;

/** Lays a plot out on a sheet and draws it, whatever the pen writes. */
final class PlotDrawing {

    static final double WIDTH = 720;
    static final double HEIGHT = 400;

    private static final double LEFT = 58;
    private static final double RIGHT = WIDTH - 18;
    private static final double TOP = 56;
    private static final double BOTTOM = HEIGHT - 40;
    private static final double FONT = 10;

    private static final int PAPER = 0xFFFFFF;
    private static final int INK = 0x24292F;
    private static final int QUIET = 0x6B7280;
    private static final int GRID = 0xE5E7EB;
    private static final int ZERO = 0x9CA3AF;
    // The palette of Okabe & Ito, Color Universal Design (2008): blue, bluish green, vermilion.
    private static final int TRACE = 0x0072B2;
    private static final int BELONGS = 0x009E73;
    private static final int DAMAGE = 0xD55E00;

    private final TracePlot plot;
    private final Pen pen;
    private final Window window;

    PlotDrawing(TracePlot plot, Pen pen) {
        this.plot = plot;
        this.pen = pen;
        this.window = plot.window();
    }

    void draw() {
        pen.fill(0, 0, WIDTH, HEIGHT, PAPER);
        pen.text(plot.title(), LEFT, 22, Anchor.START, 14, INK);
        pen.text(plot.note(), LEFT, 38, Anchor.START, FONT, QUIET);
        drawGrid();
        plot.flags().forEach(this::drawFlag);
        drawCurve();
        pen.text(
                "reflection, % of the outgoing wave, against distance in " + plot.xUnit(),
                RIGHT,
                HEIGHT - 10,
                Anchor.END,
                FONT,
                QUIET);
    }

    private void drawGrid() {
        Ticks across = Ticks.between(window.left(), window.right(), 8);
        for (double place : across.values()) {
            pen.line(x(place), TOP, x(place), BOTTOM, 0.6, 0, GRID);
            pen.text(Quantities.number(place, across.digits()), x(place), BOTTOM + 14, Anchor.MIDDLE, FONT, QUIET);
        }
        Ticks up = Ticks.between(window.bottom(), window.top(), 6);
        for (double place : up.values()) {
            boolean zero = Math.abs(place) < up.step() / 2;
            pen.line(LEFT, y(place), RIGHT, y(place), zero ? 0.9 : 0.6, 0, zero ? ZERO : GRID);
            pen.text(Quantities.number(place, up.digits()) + " %", LEFT - 6, y(place) + 3.5, Anchor.END, FONT, QUIET);
        }
    }

    private void drawFlag(Flag flag) {
        if (flag.x() < window.left() || flag.x() > window.right()) {
            return;
        }
        double at = x(flag.x());
        int colour = flag.damage() ? DAMAGE : BELONGS;
        pen.line(at, TOP, at, BOTTOM, 0.9, flag.damage() ? 0 : 4, colour);
        boolean toTheLeft = at > RIGHT - 24;
        double way = toTheLeft ? -1 : 1;
        double tip = flag.damage() ? 20 : 15;
        pen.shape(
                new double[] {at, at + way * 15, at + way * tip, at + way * 15, at},
                new double[] {TOP, TOP, TOP + 6.5, TOP + 13, TOP + 13},
                colour);
        pen.text(flag.letter(), at + way * 7.5, TOP + 10, Anchor.MIDDLE, FONT, PAPER);
    }

    /** The curve, reduced to the highest and lowest point of each third of a point of paper. */
    private void drawCurve() {
        int columns = (int) ((RIGHT - LEFT) * 3);
        double[] xs = new double[4 * columns + 8];
        double[] ys = new double[4 * columns + 8];
        int used = 0;
        int index = firstShown();
        int end = lastShown();
        while (index <= end) {
            int next = index;
            int low = index;
            int high = index;
            long column = column(index, columns);
            while (next <= end && column(next, columns) == column) {
                low = plot.percent(next) < plot.percent(low) ? next : low;
                high = plot.percent(next) > plot.percent(high) ? next : high;
                next++;
            }
            for (int point : new int[] {index, Math.min(low, high), Math.max(low, high), next - 1}) {
                if (used == 0 || xs[used - 1] != x(plot.x(point)) || ys[used - 1] != y(plot.percent(point))) {
                    xs[used] = x(plot.x(point));
                    ys[used++] = y(plot.percent(point));
                }
            }
            index = next;
        }
        if (used > 1) {
            pen.line(Arrays.copyOf(xs, used), Arrays.copyOf(ys, used), 1.1, 0, TRACE);
        }
    }

    private int firstShown() {
        int index = 0;
        while (index < plot.count() - 1 && plot.x(index) < window.left()) {
            index++;
        }
        return index;
    }

    private int lastShown() {
        int index = plot.count() - 1;
        while (index > 0 && plot.x(index) > window.right()) {
            index--;
        }
        return index;
    }

    private long column(int index, int columns) {
        return Math.round((plot.x(index) - window.left()) / (window.right() - window.left()) * columns);
    }

    private double x(double place) {
        return LEFT + (place - window.left()) / (window.right() - window.left()) * (RIGHT - LEFT);
    }

    private double y(double percent) {
        double inside = Math.max(window.bottom(), Math.min(window.top(), percent));
        return BOTTOM - (inside - window.bottom()) / (window.top() - window.bottom()) * (BOTTOM - TOP);
    }
}

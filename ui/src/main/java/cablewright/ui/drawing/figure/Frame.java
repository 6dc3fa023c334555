// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen;
import java.util.List;

/** Axes on a sheet: from values to places, with grid, numbers and labels. */
final class Frame {

    private static final double TICK_WIDTH_FONTS = 5;
    private static final double TICK_HEIGHT_FONTS = 1.5;

    private final Pen pen;
    private final Palette palette;
    private final double font;
    private final Box box;
    private final Axis x;
    private final Axis y;

    Frame(Pen pen, Palette palette, double font, Box box, Axis x, Axis y) {
        this.pen = pen;
        this.palette = palette;
        this.font = font;
        this.box = box;
        this.x = x;
        this.y = y;
    }

    Box box() {
        return box;
    }

    Axis yAxis() {
        return y;
    }

    double x(double value) {
        return box.x() + x.share(value) * box.width();
    }

    /** Places above and below the axis are held at its ends. */
    double y(double value) {
        double held = Math.max(y.from(), Math.min(y.to(), value));
        return box.bottom() - y.share(held) * box.height();
    }

    boolean has(double xValue) {
        return xValue >= x.from() && xValue <= x.to();
    }

    void drawGrid() {
        for (Axis.Tick tick : xTicks()) {
            pen.line(x(tick.value()), box.y(), x(tick.value()), box.bottom(), line(0.6), 0, palette.of(Ink.GRID));
        }
        for (Axis.Tick tick : yTicks()) {
            boolean zero = !y.logarithmic() && Math.abs(tick.value()) < 1e-9 * (y.to() - y.from());
            Colour colour = zero ? palette.of(Ink.AXIS) : palette.of(Ink.GRID);
            pen.line(box.x(), y(tick.value()), box.right(), y(tick.value()), line(zero ? 0.9 : 0.6), 0, colour);
        }
    }

    void drawNumbers() {
        for (Axis.Tick tick : xTicks()) {
            pen.text(
                    tick.text(),
                    x(tick.value()),
                    box.bottom() + 1.3 * font,
                    Pen.Anchor.MIDDLE,
                    font,
                    palette.of(Ink.FAINT));
        }
        for (Axis.Tick tick : yTicks()) {
            double baseline = y(tick.value()) + 0.35 * font;
            pen.text(tick.text(), box.x() - 0.5 * font, baseline, Pen.Anchor.END, font, palette.of(Ink.FAINT));
        }
        pen.text(x.label(), box.right(), box.bottom() + 2.7 * font, Pen.Anchor.END, font, palette.of(Ink.FAINT));
        pen.line(box.x(), box.bottom(), box.right(), box.bottom(), line(0.8), 0, palette.of(Ink.AXIS));
    }

    /** The vertical axis' label, under the panel's title. */
    void drawYLabel(Box whole) {
        pen.text(y.label(), whole.x(), whole.y() + 2.6 * font, Pen.Anchor.START, font, palette.of(Ink.FAINT));
    }

    private List<Axis.Tick> xTicks() {
        return x.ticks((int) Math.max(2, box.width() / (TICK_WIDTH_FONTS * font)));
    }

    private List<Axis.Tick> yTicks() {
        return y.ticks((int) Math.max(2, box.height() / (TICK_HEIGHT_FONTS * font)));
    }

    /** Thickness that grows with the letters. */
    double line(double points) {
        return points * font / 10;
    }
}

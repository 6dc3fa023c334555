// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.lessons.demonstration.Curve;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import java.util.Arrays;

/** Draws a plot of lines. */
final class PlotPainter {

    private static final double LETTER_FONTS = 0.54;
    private static final double SAMPLE_FONTS = 2;

    private final Pen pen;
    private final Palette palette;
    private final double font;
    private final Frame frame;

    PlotPainter(Pen pen, Palette palette, double font, Frame frame) {
        this.pen = pen;
        this.palette = palette;
        this.font = font;
        this.frame = frame;
    }

    void draw(Panel.Plot plot, Box whole) {
        Box box = frame.box();
        if (plot.noise() > 0) {
            double top = frame.y(plot.noise());
            pen.fill(box.x(), top, box.width(), Math.max(1, frame.y(-plot.noise()) - top), palette.band());
        }
        frame.drawGrid();
        plot.strokes().forEach(this::drawStroke);
        plot.marks().forEach(this::drawMark);
        for (int i = plot.lines().size() - 1; i >= 0; i--) {
            drawLine(plot.lines().get(i));
        }
        for (int i = 0; i < plot.marks().size(); i++) {
            drawWords(plot.marks().get(i), i);
        }
        frame.drawNumbers();
        frame.drawYLabel(whole);
        drawLegend(plot, whole);
    }

    private void drawStroke(Panel.Stroke stroke) {
        double thickness = frame.line(0.5 + 2 * stroke.weight());
        pen.line(
                frame.x(stroke.fromX()),
                frame.y(stroke.fromY()),
                frame.x(stroke.toX()),
                frame.y(stroke.toY()),
                thickness,
                0,
                palette.of(stroke.tone()));
    }

    private void drawMark(Panel.Mark mark) {
        if (frame.has(mark.x())) {
            double x = frame.x(mark.x());
            double dash = 0.3 * font;
            pen.line(x, frame.box().y(), x, frame.box().bottom(), frame.line(0.9), dash, palette.of(mark.tone()));
        }
    }

    /** On paper of their own, and on different lines where marks stand close. */
    private void drawWords(Panel.Mark mark, int index) {
        if (!frame.has(mark.x()) || mark.text().isEmpty()) {
            return;
        }
        double x = frame.x(mark.x());
        double width = mark.text().length() * LETTER_FONTS * font;
        boolean left = x + width + font > frame.box().right();
        double baseline = frame.box().y() + (1.1 + 1.25 * (index % 2)) * font;
        double place = left ? x - 0.4 * font : x + 0.4 * font;
        pen.fill(left ? place - width : place, baseline - 0.9 * font, width, 1.2 * font, palette.paper());
        pen.text(mark.text(), place, baseline, left ? Pen.Anchor.END : Pen.Anchor.START, font, palette.of(mark.tone()));
    }

    /** At the right end of the line under the title. */
    private void drawLegend(Panel.Plot plot, Box whole) {
        double x = frame.box().right() + 1.6 * font;
        for (Panel.Line line : plot.lines()) {
            x -= line.name().isEmpty() ? 0 : entryWidth(line);
        }
        double baseline = whole.y() + 2.6 * font;
        for (Panel.Line line : plot.lines()) {
            if (!line.name().isEmpty()) {
                double middle = baseline - 0.33 * font;
                double dash = line.dashed() ? 0.4 * font : 0;
                pen.line(x, middle, x + SAMPLE_FONTS * font, middle, frame.line(1.6), dash, palette.of(line.tone()));
                double text = x + (SAMPLE_FONTS + 0.5) * font;
                pen.text(line.name(), text, baseline, Pen.Anchor.START, font, palette.soft());
                x += entryWidth(line);
            }
        }
    }

    private double entryWidth(Panel.Line line) {
        return (SAMPLE_FONTS + 2.1 + line.name().length() * LETTER_FONTS) * font;
    }

    /** The curve with points right at the ends of the axis, where it goes on beyond them. */
    private static Curve cut(Curve curve, Axis axis) {
        int count = curve.count();
        double[] x = new double[count + 2];
        double[] y = new double[count + 2];
        int used = 0;
        for (int i = 0; i < count; i++) {
            for (double end : new double[] {axis.from(), axis.to()}) {
                if (i > 0 && curve.x(i - 1) < end && curve.x(i) > end) {
                    x[used] = end;
                    y[used++] = curve.at(end);
                }
            }
            x[used] = curve.x(i);
            y[used++] = curve.y(i);
        }
        return new Curve(Arrays.copyOf(x, used), Arrays.copyOf(y, used));
    }

    /** The curve where the axis has it, each third of a unit across reduced to its lowest and highest point. */
    private void drawLine(Panel.Line line) {
        Curve curve = cut(line.curve(), frame.xAxis());
        double[] xs = new double[2 * curve.count() + 2];
        double[] ys = new double[2 * curve.count() + 2];
        int used = 0;
        int index = 0;
        while (index < curve.count()) {
            if (!frame.has(curve.x(index))) {
                index++;
                continue;
            }
            int low = index;
            int high = index;
            long column = Math.round(3 * frame.x(curve.x(index)));
            int next = index;
            while (next < curve.count()
                    && frame.has(curve.x(next))
                    && Math.round(3 * frame.x(curve.x(next))) == column) {
                low = curve.y(next) < curve.y(low) ? next : low;
                high = curve.y(next) > curve.y(high) ? next : high;
                next++;
            }
            for (int point : new int[] {Math.min(low, high), Math.max(low, high)}) {
                xs[used] = frame.x(curve.x(point));
                ys[used] = frame.y(curve.y(point));
                used += used == 0 || xs[used] != xs[used - 1] || ys[used] != ys[used - 1] ? 1 : 0;
            }
            index = next;
        }
        if (used > 1) {
            double dash = line.dashed() ? 0.4 * font : 0;
            pen.line(Arrays.copyOf(xs, used), Arrays.copyOf(ys, used), frame.line(1.4), dash, palette.of(line.tone()));
        }
    }
}

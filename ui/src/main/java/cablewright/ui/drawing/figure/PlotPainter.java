// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.lessons.demonstration.Curve;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;

/** Draws a plot of lines. */
final class PlotPainter {

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
            pen.fill(box.x(), top, box.width(), Math.max(1, frame.y(-plot.noise()) - top), palette.of(Ink.NOISE));
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
        double width = pen.width(mark.text(), font);
        boolean left = x + width + font > frame.box().right();
        double baseline = frame.box().y() + (1.1 + 1.25 * (index % 2)) * font;
        double place = left ? x - 0.4 * font : x + 0.4 * font;
        pen.fill(left ? place - width : place, baseline - 0.9 * font, width, 1.2 * font, palette.of(Ink.PAPER));
        pen.text(mark.text(), place, baseline, left ? Pen.Anchor.END : Pen.Anchor.START, font, palette.of(mark.tone()));
    }

    /** What is drawn, from the right end of the line under the title; the band of noise among it. */
    private void drawLegend(Panel.Plot plot, Box whole) {
        double x = frame.box().right();
        if (plot.noise() > 0) {
            x = drawEntry(
                    plot.noiseName(),
                    x,
                    whole,
                    (left, middle) -> pen.fill(
                            left, middle - 0.4 * font, SAMPLE_FONTS * font, 0.8 * font, palette.of(Ink.NOISE)));
        }
        for (int i = plot.lines().size() - 1; i >= 0; i--) {
            Panel.Line line = plot.lines().get(i);
            if (!line.name().isEmpty()) {
                double dash = line.dashed() ? 0.4 * font : 0;
                x = drawEntry(
                        line.name(),
                        x,
                        whole,
                        (left, middle) -> pen.line(
                                left,
                                middle,
                                left + SAMPLE_FONTS * font,
                                middle,
                                frame.line(1.6),
                                dash,
                                palette.of(line.tone())));
            }
        }
    }

    /** Draws the sample of an entry. */
    private interface Sample {
        void draw(double left, double middle);
    }

    private double drawEntry(String name, double right, Box whole, Sample sample) {
        double baseline = whole.y() + 2.6 * font;
        double text = right - pen.width(name, font);
        double left = text - (SAMPLE_FONTS + 0.5) * font;
        sample.draw(left, baseline - 0.33 * font);
        pen.text(name, text, baseline, Pen.Anchor.START, font, palette.of(Ink.FAINT));
        return left - 1.6 * font;
    }

    /** The curve where the axes have it, with a bar at the edge wherever it leaves them upward or downward. */
    private void drawLine(Panel.Line line) {
        Curve curve = line.curve();
        Box box = frame.box();
        ReducedCurve shown =
                ReducedCurve.of(curve.count(), i -> frame.x(curve.x(i)), curve::y, box.x(), box.right(), pen.columns());
        if (shown.count() > 1) {
            double dash = line.dashed() ? 0.4 * font : 0;
            pen.line(shown.xs(), shown.ys(frame::y), frame.line(1.4), dash, palette.of(line.tone()));
            double least = frame.line(2);
            double in = frame.line(1.5);
            shown.above(Math.nextUp(frame.yAxis().to())).forEach(part -> clipped(part, box.y() + in, least));
            shown.below(Math.nextDown(frame.yAxis().from())).forEach(part -> clipped(part, box.bottom() - in, least));
        }
    }

    private void clipped(ReducedCurve.Stretch part, double y, double least) {
        pen.line(part.from(), y, Math.max(part.to(), part.from() + least), y, frame.line(3), 0, palette.of(Ink.CLIP));
    }
}

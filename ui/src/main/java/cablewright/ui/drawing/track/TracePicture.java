// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.words.Words;

/** A plot of one trace on a sheet of its own, with its title and how it was taken. */
public final class TracePicture {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 400;
    private static final double HEAD = 30;
    private static final double TITLE = 14;
    private static final double FONT = 11.5;

    private final TracePlot plot;
    private final Words words;

    /**
     * Lays out a sheet.
     *
     * @param plot what to draw
     * @param words the words
     */
    public TracePicture(TracePlot plot, Words words) {
        this.words = words;
        this.plot = plot;
    }

    /**
     * Draws the sheet. The same plot gives the same bytes on every machine.
     *
     * @param format kind of picture
     * @return the picture file
     */
    public byte[] draw(PictureFormat format) {
        return format.draw(WIDTH, HEIGHT, plot.title(), this::draw);
    }

    private void draw(Pen pen) {
        Palette palette = Palette.LIGHT;
        TracePlot.Window window = plot.window();
        DistanceView shown = new DistanceView(
                plot.unit().toMetres(window.left()), plot.unit().toMetres(window.right()), 0, 1);
        Box area = new Box(0, HEAD, WIDTH, HEIGHT - HEAD - 12);
        TrackSheet sheet = new TrackSheet(pen, palette, area, shown, plot.unit(), FONT);
        Box within = TracePainter.plotOf(area, sheet.scale());
        PercentScale vertical = new PercentScale(
                (window.top() + window.bottom()) / 200,
                (window.top() - window.bottom()) / 200,
                within.y(),
                within.height());
        pen.fill(0, 0, WIDTH, HEIGHT, palette.of(Ink.PAPER));
        pen.text(plot.title(), sheet.left(), 22, Anchor.START, TITLE, palette.of(Ink.TEXT));
        sheet.write(plot.note(), sheet.left(), HEAD + 9, Anchor.START, Ink.FAINT);
        TracePainter painter = new TracePainter(sheet, vertical);
        painter.drawGrid(false);
        ReducedCurve curve = ReducedCurve.of(
                plot.count(),
                i -> sheet.pixel(plot.unit().toMetres(plot.x(i))),
                i -> plot.percent(i) / 100,
                sheet.left(),
                sheet.right(),
                sheet.columns());
        painter.drawCurve(curve, TracePainter.Look.TRACE);
        painter.drawClipping(curve, Double.POSITIVE_INFINITY);
        new FlagPainter(sheet).draw(plot.flags());
        sheet.write(
                words.texts().sibling(TrackSheet.BUNDLE).say("trace.axes"),
                sheet.right(),
                HEIGHT - 10,
                Anchor.END,
                Ink.FAINT);
    }
}

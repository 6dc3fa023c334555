// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;

/** Draws a figure's panels with a pen. */
public final class FigureDrawing {

    private final Pen pen;
    private final Palette palette;
    private final double font;

    /**
     * Prepares to draw.
     *
     * @param pen what to draw with
     * @param palette its colours
     * @param font size of its letters, in the pen's units
     */
    public FigureDrawing(Pen pen, Palette palette, double font) {
        this.pen = pen;
        this.palette = palette;
        this.font = font;
    }

    /**
     * Draws.
     *
     * @param figure the figure
     * @param sheet where
     */
    public void draw(Figure figure, Box sheet) {
        for (FigureLayout.Placed placed : new FigureLayout(figure, sheet, font).placed()) {
            Box whole = placed.whole();
            pen.text(
                    placed.panel().title(),
                    whole.x(),
                    whole.y() + font,
                    Pen.Anchor.START,
                    1.05 * font,
                    palette.of(Ink.TEXT));
            draw(placed);
        }
    }

    private void draw(FigureLayout.Placed placed) {
        if (placed.panel() instanceof Panel.Plot plot) {
            Frame frame = new Frame(pen, palette, font, placed.plot(), plot.x(), plot.y());
            new PlotPainter(pen, palette, font, frame).draw(plot, placed.whole());
        } else if (placed.panel() instanceof Panel.Map map) {
            Frame frame = new Frame(pen, palette, font, placed.plot(), map.x(), map.y());
            new MapPainter(pen, palette, font, frame).draw(map, placed.whole());
        } else if (placed.panel() instanceof Panel.Cut cut) {
            new CutPainter(pen, palette, font).draw(cut, placed.plot());
        }
    }
}

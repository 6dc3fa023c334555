// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.section.CrossSectionPainter;

/** Draws cuts through cables side by side, each with a line of words under it. */
final class CutPainter {

    private static final double NOTES_FONTS = 3.4;
    private static final double FILLED = 0.92;

    private final Pen pen;
    private final Palette palette;
    private final double font;

    CutPainter(Pen pen, Palette palette, double font) {
        this.pen = pen;
        this.palette = palette;
        this.font = font;
    }

    void draw(Panel.Cut panel, Box box) {
        int count = panel.changed().isPresent() ? 2 : 1;
        double width = box.width() / count;
        double height = box.height() - NOTES_FONTS * font;
        double radius = Math.min(width, height) / 2 * FILLED;
        double y = box.y() + height / 2;
        CrossSectionPainter painter = new CrossSectionPainter(pen, palette);
        for (int i = 0; i < count; i++) {
            double x = box.x() + (i + 0.5) * width;
            painter.draw(i == 0 ? panel.sound() : panel.changed().orElseThrow(), x, y, radius);
            if (i < panel.notes().size()) {
                String note = panel.notes().get(i);
                // Words that are too wide to stand side by side stand on two lines.
                boolean lower = i > 0 && pen.width(note, font) > width;
                double baseline = y + radius + (lower ? 2.9 : 1.6) * font;
                pen.text(note, x, baseline, Pen.Anchor.MIDDLE, font, palette.of(Ink.FAINT));
            }
        }
    }
}

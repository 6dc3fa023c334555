// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.lessons.demonstration.damagemap.DamageMap;
import cablewright.lessons.demonstration.damagemap.MapBoundary;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen;

/** Draws a map of what can be seen: areas, the lines between them, and the place that is looked at. */
final class MapPainter {

    private final Pen pen;
    private final Palette palette;
    private final double font;
    private final Frame frame;

    MapPainter(Pen pen, Palette palette, double font, Frame frame) {
        this.pen = pen;
        this.palette = palette;
        this.font = font;
        this.frame = frame;
    }

    void draw(Panel.Map panel, Box whole) {
        drawAreas(panel.map());
        frame.drawGrid();
        if (panel.map().isComplete()) {
            drawBoundary(panel.map(), Visibility.MARGINAL, 0.5 * font);
            drawBoundary(panel.map(), Visibility.CLEAR, 0);
        }
        frame.drawNumbers();
        frame.drawYLabel(whole);
        drawLegend(panel, whole);
        drawChosen(panel);
    }

    private void drawAreas(DamageMap map) {
        int rows = map.settings().rows();
        int columns = map.settings().columns();
        double width = frame.box().width() / columns;
        double height = frame.box().height() / rows;
        for (int row = 0; row < rows; row++) {
            double y = frame.box().bottom() - (row + 1) * height;
            int from = 0;
            for (int column = 1; column <= columns; column++) {
                if (column == columns || map.visibility(row, column) != map.visibility(row, from)) {
                    double x = frame.box().x() + from * width;
                    // A little overlap, or thin gaps show between the rectangles.
                    pen.fill(x, y, (column - from) * width, height + 0.3, colour(map.visibility(row, from)));
                    from = column;
                }
            }
        }
    }

    private Colour colour(Visibility visibility) {
        return palette.of(
                switch (visibility) {
                    case CLEAR -> Ink.CLEAR_AREA;
                    case MARGINAL -> Ink.MARGINAL_AREA;
                    case HIDDEN -> Ink.HIDDEN_AREA;
                });
    }

    private void drawBoundary(DamageMap map, Visibility least, double dash) {
        for (MapBoundary.Segment segment : MapBoundary.of(map, least)) {
            pen.line(
                    x(map, segment.fromColumn()),
                    y(map, segment.fromRow()),
                    x(map, segment.toColumn()),
                    y(map, segment.toRow()),
                    frame.line(1.5),
                    dash,
                    palette.of(Ink.TEXT));
        }
    }

    private double x(DamageMap map, double column) {
        return frame.box().x()
                + (column + 0.5) / map.settings().columns() * frame.box().width();
    }

    private double y(DamageMap map, double row) {
        return frame.box().bottom()
                - (row + 0.5) / map.settings().rows() * frame.box().height();
    }

    private void drawChosen(Panel.Map panel) {
        double x = frame.x(panel.chosenX());
        double y = frame.y(panel.chosenY());
        double arm = 0.8 * font;
        Colour colour = palette.of(Tone.OTHER);
        pen.line(x - arm, y, x + arm, y, frame.line(2), 0, colour);
        pen.line(x, y - arm, x, y + arm, frame.line(2), 0, colour);
    }

    private void drawLegend(Panel.Map panel, Box whole) {
        double x = frame.box().right() + 1.6 * font;
        for (String name : panel.names()) {
            x -= entryWidth(name);
        }
        double baseline = whole.y() + 2.6 * font;
        for (Visibility visibility : Visibility.values()) {
            String name = panel.names().get(visibility.ordinal());
            pen.fill(x, baseline - 0.85 * font, 1.4 * font, font, colour(visibility));
            pen.text(name, x + 1.9 * font, baseline, Pen.Anchor.START, font, palette.of(Ink.FAINT));
            x += entryWidth(name);
        }
    }

    private double entryWidth(String name) {
        return 3.5 * font + pen.width(name, font);
    }
}

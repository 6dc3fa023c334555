// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.ui.drawing.pen.Box;
import java.util.ArrayList;
import java.util.List;

/** Where the panels of a figure lie on a sheet, and where within each its axes are. */
public final class FigureLayout {

    private static final double ROW_GAP = 1.2;
    private static final double COLUMN_GAP = 1.6;

    private final List<Placed> placed = new ArrayList<>();
    private final double font;

    /**
     * A panel in its place.
     *
     * @param panel the panel
     * @param whole all that belongs to it
     * @param plot what its axes enclose
     */
    public record Placed(Panel panel, Box whole, Box plot) {}

    /**
     * Lays out a figure.
     *
     * @param figure the figure
     * @param sheet where it is to lie
     * @param font size of its letters, in the units of the sheet
     */
    public FigureLayout(Figure figure, Box sheet, double font) {
        this.font = font;
        double weights = figure.rows().stream().mapToDouble(Figure.Row::weight).sum();
        double free = sheet.height() - ROW_GAP * font * (figure.rows().size() - 1);
        double y = sheet.y();
        for (Figure.Row row : figure.rows()) {
            double height = free * row.weight() / weights;
            placeRow(row, new Box(sheet.x(), y, sheet.width(), height));
            y += height + ROW_GAP * font;
        }
    }

    private void placeRow(Figure.Row row, Box box) {
        double weights = row.panels().stream().mapToDouble(Figure.Part::weight).sum();
        double free = box.width() - COLUMN_GAP * font * (row.panels().size() - 1);
        double x = box.x();
        for (Figure.Part part : row.panels()) {
            double width = free * part.weight() / weights;
            Box whole = new Box(x, box.y(), width, box.height());
            placed.add(new Placed(part.panel(), whole, plot(part.panel(), whole)));
            x += width + COLUMN_GAP * font;
        }
    }

    private Box plot(Panel panel, Box whole) {
        return panel instanceof Panel.Cut
                ? whole.inset(0, 1.9 * font, 0, 0)
                : whole.inset(3.6 * font, 3.6 * font, 1.2 * font, 3 * font);
    }

    /**
     * Returns the panels in their places.
     *
     * @return the panels, row by row
     */
    public List<Placed> placed() {
        return List.copyOf(placed);
    }
}

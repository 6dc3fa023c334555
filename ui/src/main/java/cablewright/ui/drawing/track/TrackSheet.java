// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;

/**
 * Where one track is drawn: a pen, its colours, a strip of the sheet and the distances along it. All lengths grow with the
 * letters, so that screen, projector and paper need no sets of sizes of their own.
 */
public final class TrackSheet {

    /** Name of the bundle that holds what drawings say. */
    public static final String BUNDLE = "cablewright.ui.drawing.drawing";

    private static final double BASE_FONT = 13;
    private static final double SMALL = 0.88;
    private static final double GUTTER = 62;
    private static final double RIGHT_MARGIN = 16;
    private static final double TICKS_APART = 76;
    private static final double FINE_TICKS = 5;
    private static final double HALF_LETTER = 0.35;

    private final Pen pen;
    private final Palette palette;
    private final Box area;
    private final DistanceView view;
    private final LengthUnit unit;
    private final double font;

    /**
     * Lays out a strip.
     *
     * @param pen what to draw with
     * @param palette the colours
     * @param area the strip, with the room for the labels of vertical axes
     * @param shown which distances are shown
     * @param unit unit of length in which it is read
     * @param font size of the letters, in the unit of the pen
     */
    public TrackSheet(Pen pen, Palette palette, Box area, DistanceView shown, LengthUnit unit, double font) {
        this.pen = pen;
        this.palette = palette;
        this.area = area;
        this.unit = unit;
        this.font = font;
        this.view = viewOn(area, shown, font);
    }

    /**
     * Lays distances along a strip.
     *
     * @param area the strip
     * @param shown which distances are shown
     * @param font size of the letters
     * @return the distances, beside the room for the labels of vertical axes
     */
    public static DistanceView viewOn(Box area, DistanceView shown, double font) {
        double room = area.width() - (GUTTER + RIGHT_MARGIN) * scale(font);
        return shown.on(area.x() + GUTTER * scale(font), Math.max(1, room));
    }

    /**
     * Returns how much larger than usual everything is drawn.
     *
     * @param font size of the letters
     * @return factor
     */
    public static double scale(double font) {
        return font / BASE_FONT;
    }

    /**
     * Returns how much larger than usual everything is drawn.
     *
     * @return factor
     */
    public double scale() {
        return scale(font);
    }

    Pen pen() {
        return pen;
    }

    Palette palette() {
        return palette;
    }

    DistanceView view() {
        return view;
    }

    /** Columns in which a curve is reduced, for each unit across: pixels on a screen, a third of a point on paper. */
    double columns() {
        return pen.columns();
    }

    Quantities quantities() {
        return new Quantities(unit);
    }

    /** Colour of an ink. */
    Colour ink(Ink ink) {
        return palette.of(ink);
    }

    /** Left edge of what is drawn, beside the labels. */
    double left() {
        return view.leftPixels();
    }

    double right() {
        return view.rightPixels();
    }

    double top() {
        return area.y();
    }

    double bottom() {
        return area.bottom();
    }

    Box area() {
        return area;
    }

    /** Whether a place is within the strip, or on its very edge. */
    boolean isShown(double x) {
        return x >= left() - 1 && x <= right() + 1;
    }

    double pixel(double metres) {
        return view.pixel(metres);
    }

    /** The place of a distance, held within the strip. */
    double held(double metres) {
        return Math.max(left(), Math.min(right(), view.pixel(metres)));
    }

    /** Size of small letters. */
    double small() {
        return SMALL * font;
    }

    double smallWidth(String text) {
        return pen.width(text, small());
    }

    /**
     * Writes small letters.
     *
     * @param text what
     * @param x where, across
     * @param middle where, down, half-way up the letters
     * @param anchor where it lies about its place
     * @param ink its colour
     */
    public void write(String text, double x, double middle, Pen.Anchor anchor, Ink ink) {
        pen.text(text, x, middle + HALF_LETTER * small(), anchor, small(), ink(ink));
    }

    void line(double x1, double y1, double x2, double y2, double thickness, Ink ink) {
        pen.line(x1, y1, x2, y2, thickness * scale(), 0, ink(ink));
    }

    private Ticks ticks(double most) {
        return Ticks.between(
                unit.fromMetres(view.fromMetres()), unit.fromMetres(view.toMetres()), (int) Math.max(2, most));
    }

    private Ticks distanceTicks() {
        return ticks(view.widthPixels() / (TICKS_APART * scale()));
    }

    /** Round numbers of the shown unit, with an upright line each. */
    void drawDistanceGrid(double from, double to) {
        for (double shown : distanceTicks().values()) {
            double x = pen.sharp(view.pixel(unit.toMetres(shown)));
            pen.line(x, from, x, to, Math.min(1, scale()), 0, ink(Ink.GRID));
        }
    }

    /** Lines between those of the grid, to read paper by. */
    void drawFineDistanceGrid(double from, double to) {
        for (double shown :
                ticks(FINE_TICKS * view.widthPixels() / (TICKS_APART * scale())).values()) {
            double x = view.pixel(unit.toMetres(shown));
            pen.line(x, from, x, to, 0.5 * scale(), 0, ink(Ink.FINE_GRID));
        }
    }

    void drawDistanceLabels(double middle) {
        Ticks ticks = distanceTicks();
        for (double shown : ticks.values()) {
            double metres = unit.toMetres(shown);
            String text = quantities().length(metres, ticks.digits());
            double most = area.right() - smallWidth(text) / 2 - 1;
            write(text, Math.min(view.pixel(metres), most), middle, Pen.Anchor.MIDDLE, Ink.FAINT);
        }
    }

    /**
     * Draws a cursor.
     *
     * @param metres where it stands
     * @param from its upper end
     * @param to its lower end
     * @param dashed whether it is the second one
     */
    public void drawCursor(double metres, double from, double to, boolean dashed) {
        double x = view.pixel(metres);
        if (isShown(x)) {
            double at = pen.sharp(x);
            pen.line(
                    at,
                    from,
                    at,
                    to,
                    Math.max(1, scale()),
                    dashed ? 3 * scale() : 0,
                    ink(Ink.TEXT).faded(0.8));
        }
    }
}

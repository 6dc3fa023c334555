// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

/**
 * Something to draw with: a canvas, pixels in memory, a vector file. Coordinates run from the top left corner, x to the right,
 * y down; their unit is a pixel on a screen and a point of 1/72 inch elsewhere.
 */
public interface Pen {

    /** Where a text lies about its place. */
    enum Anchor {
        /** It begins there. */
        START(0),
        /** Its middle is there. */
        MIDDLE(0.5),
        /** It ends there. */
        END(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }

        double share() {
            return share;
        }
    }

    /** Fills a rectangle. */
    void fill(double x, double y, double width, double height, Colour colour);

    /** Draws a polyline; dash 0 for an unbroken one, otherwise the length of its dashes and of its gaps. */
    void line(double[] xs, double[] ys, double thickness, double dash, Colour colour);

    /** Fills a polygon. */
    void shape(double[] xs, double[] ys, Colour colour);

    /** Writes a line of text with its baseline at y. */
    void text(String text, double x, double y, Anchor anchor, double size, Colour colour);

    /** Returns how wide a line of text is. */
    double width(String text, double size);

    /** Draws something of which only what lies within a box shows. */
    void within(Box box, Runnable drawing);

    /** Returns the nearest place at which a thin upright or level line is sharp; the same place where there are no pixels. */
    default double sharp(double place) {
        return place;
    }

    /** Returns how many columns a unit across has that can be distinguished: three where there are no pixels. */
    default double columns() {
        return 3;
    }

    /** Draws a straight line. */
    default void line(double x1, double y1, double x2, double y2, double thickness, double dash, Colour colour) {
        line(new double[] {x1, x2}, new double[] {y1, y2}, thickness, dash, colour);
    }

    /** Fills a disc. */
    default void disc(double x, double y, double radius, Colour colour) {
        fill(Outline.ellipse(x, y, radius, radius), colour);
    }

    /** Draws a circle. */
    default void ring(double x, double y, double radius, double thickness, Colour colour) {
        draw(Outline.ellipse(x, y, radius, radius), thickness, 0, colour);
    }

    /** Fills an outline. */
    default void fill(Outline outline, Colour colour) {
        shape(outline.xs(), outline.ys(), colour);
    }

    /** Draws along an outline. */
    default void draw(Outline outline, double thickness, double dash, Colour colour) {
        line(outline.closedXs(), outline.closedYs(), thickness, dash, colour);
    }

    /** Fills an outline and draws along it. */
    default void draw(Outline outline, Colour inside, double thickness, Colour edge) {
        fill(outline, inside);
        draw(outline, thickness, 0, edge);
    }

    /** Cuts a text so that it fits, and shows by an ellipsis that something is missing. */
    default String cut(String text, double size, double most) {
        if (width(text, size) <= most) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (width(text.substring(0, middle).strip() + "…", size) <= most) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low == 0 ? "" : text.substring(0, low).strip() + "…";
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

/**
 * Something to draw with. Coordinates are points of 1/72 inch from the top left corner, x to the right, y down. Colours
 * are 0xRRGGBB.
 */
public interface Pen {

    /** Where a text lies about its place. */
    enum Anchor {
        /** It begins there. */
        START,
        /** Its middle is there. */
        MIDDLE,
        /** It ends there. */
        END
    }

    /** Fills a rectangle. */
    void fill(double x, double y, double width, double height, int colour);

    /** Draws a polyline; dash 0 for an unbroken one. */
    void line(double[] xs, double[] ys, double thickness, double dash, int colour);

    /** Fills a polygon. */
    void shape(double[] xs, double[] ys, int colour);

    /** Writes a line of text with its baseline at y. */
    void text(String text, double x, double y, Anchor anchor, double size, int colour);

    /** Draws a straight line. */
    default void line(double x1, double y1, double x2, double y2, double thickness, double dash, int colour) {
        line(new double[] {x1, x2}, new double[] {y1, y2}, thickness, dash, colour);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

/**
 * A rectangle on the sheet.
 *
 * @param x left edge
 * @param y top edge
 * @param width its width
 * @param height its height
 */
public record Box(double x, double y, double width, double height) {

    /**
     * Returns the right edge.
     *
     * @return across
     */
    public double right() {
        return x + width;
    }

    /**
     * Returns the bottom edge.
     *
     * @return down
     */
    public double bottom() {
        return y + height;
    }

    /**
     * Leaves room at each side.
     *
     * @param left how much at the left
     * @param top how much at the top
     * @param right how much at the right
     * @param bottom how much at the bottom
     * @return the rectangle within
     */
    public Box inset(double left, double top, double right, double bottom) {
        return new Box(x + left, y + top, Math.max(1, width - left - right), Math.max(1, height - top - bottom));
    }

    /**
     * Returns whether a place lies within.
     *
     * @param px across
     * @param py down
     * @return whether it does
     */
    public boolean contains(double px, double py) {
        return px >= x && px <= right() && py >= y && py <= bottom();
    }
}

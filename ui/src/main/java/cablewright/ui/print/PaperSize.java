// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

/** The sizes of paper that people have, upright, in points of 1/72 inch. */
public enum PaperSize {
    /** ISO 216: 210 mm by 297 mm. */
    A4(210 / 25.4 * 72, 297 / 25.4 * 72),
    /** ANSI Y14.1 size A: 8.5 inch by 11 inch. */
    LETTER(8.5 * 72, 11 * 72);

    private final double width;
    private final double height;

    PaperSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /**
     * Returns how wide it is.
     *
     * @return width, in points
     */
    public double width() {
        return width;
    }

    /**
     * Returns how tall it is.
     *
     * @return height, in points
     */
    public double height() {
        return height;
    }
}

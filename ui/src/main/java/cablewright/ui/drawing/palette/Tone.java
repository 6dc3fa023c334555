// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.palette;

/** Which of several lines of a figure one is; a {@link Palette} gives it its colour. */
public enum Tone {
    /** What the figure is about. */
    MAIN(0x0072B2, 0x56B4E9),
    /** What it is compared with. */
    OTHER(0xD55E00, 0xFF9350),
    /** A third. */
    THIRD(0x00795A, 0x35C79C),
    /** A fourth. */
    FOURTH(0xB0508A, 0xE39BC4),
    /** A fifth. */
    FIFTH(0xB07800, 0xE6B94C),
    /** A sixth. */
    SIXTH(0x2E8FC4, 0x8CD0F5),
    /** A seventh. */
    SEVENTH(0x24292F, 0xE8EAED),
    /** What is there for reference. */
    QUIET(0x848B95, 0x7C8692);

    private final int light;
    private final int dark;

    Tone(int light, int dark) {
        this.light = light;
        this.dark = dark;
    }

    int rgb(Palette palette) {
        return palette == Palette.DARK ? dark : light;
    }
}

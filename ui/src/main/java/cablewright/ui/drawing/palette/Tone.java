// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.palette;

/** What a line or an area stands for; a {@link Palette} gives it its colour. */
public enum Tone {
    /** What the demonstration is about. */
    MAIN,
    /** What it is compared with. */
    OTHER,
    /** A third. */
    THIRD,
    /** A fourth. */
    FOURTH,
    /** A fifth. */
    FIFTH,
    /** A sixth. */
    SIXTH,
    /** A seventh. */
    SEVENTH,
    /** What is there for reference. */
    QUIET
}

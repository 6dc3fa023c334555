// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.palette;

import cablewright.ui.drawing.pen.Colour;

/** Colours of all drawings. */
public enum Palette {
    /** For white paper and light screens. */
    LIGHT,
    /** For dark screens. */
    DARK;

    /**
     * Returns the colour of an ink.
     *
     * @param ink the ink
     * @return its colour
     */
    public Colour of(Ink ink) {
        return Colour.of(ink.rgb(this));
    }

    /**
     * Returns the colour of a tone.
     *
     * @param tone the tone
     * @return its colour
     */
    public Colour of(Tone tone) {
        return Colour.of(tone.rgb(this));
    }
}

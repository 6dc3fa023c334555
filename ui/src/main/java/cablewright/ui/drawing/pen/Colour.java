// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import cablewright.simulator.check.Require;

/**
 * A colour to draw with.
 *
 * @param rgb red, green and blue as 0xRRGGBB
 * @param opacity 0 for invisible to 1 for opaque
 */
public record Colour(int rgb, double opacity) {

    /** Checks the ranges. */
    public Colour {
        Require.between("opacity", opacity, 0, 1);
    }

    /**
     * Makes an opaque colour.
     *
     * @param rgb red, green and blue as 0xRRGGBB
     * @return the colour
     */
    public static Colour of(int rgb) {
        return new Colour(rgb, 1);
    }

    /**
     * Returns the colour, less opaque.
     *
     * @param share share of its opacity that is kept, 0 to 1
     * @return the fainter colour
     */
    public Colour faded(double share) {
        return new Colour(rgb, opacity * share);
    }
}

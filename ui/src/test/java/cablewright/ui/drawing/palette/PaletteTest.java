// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.palette;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.drawing.pen.Colour;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrast as W3C, Web Content Accessibility Guidelines (WCAG) 2.1, defines it ("relative luminance", "contrast ratio"): 4.5 : 1
 * for text (success criterion 1.4.3), 3 : 1 for what has to be told from its ground (1.4.11).
 */
class PaletteTest {

    /** Grids, and areas that are bounded by a line or named beside. */
    private static final Set<Ink> GROUNDS = EnumSet.of(
            Ink.PAPER,
            Ink.GRID,
            Ink.FINE_GRID,
            Ink.NOISE,
            Ink.LOOK_HERE,
            Ink.DIELECTRIC,
            Ink.CLEAR_AREA,
            Ink.MARGINAL_AREA,
            Ink.HIDDEN_AREA);

    private static double luminance(Colour colour) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double part = (colour.rgb() >> 16 - 8 * i & 255) / 255.0;
            sum += weights[i] * (part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static double contrast(Colour one, Colour other) {
        double high = Math.max(luminance(one), luminance(other));
        double low = Math.min(luminance(one), luminance(other));
        return (high + 0.05) / (low + 0.05);
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void linesStandOutFromThePaperAndTextCanBeRead(Palette palette) {
        assertEquals(21, contrast(Colour.of(0), Colour.of(0xFFFFFF)), 1e-9, "black on white, by the definition");
        Colour paper = palette.of(Ink.PAPER);
        for (Ink ink : Ink.values()) {
            boolean boxed = ink == Ink.HARDWARE || ink == Ink.HARDWARE_EDGE;
            if (!GROUNDS.contains(ink) && !boxed) {
                assertTrue(contrast(palette.of(ink), paper) >= 3, ink + " on " + palette + " paper");
            }
        }
        for (Tone tone : Tone.values()) {
            assertTrue(contrast(palette.of(tone), paper) >= 3, tone + " on " + palette + " paper");
        }
        for (Ink text : new Ink[] {Ink.TEXT, Ink.FAINT, Ink.BELONGS, Ink.DAMAGE, Ink.MARGINAL}) {
            assertTrue(contrast(palette.of(text), paper) >= 4.5, text + " on " + palette + " paper");
        }
    }

    /** Hardware is a filled box with an edge: one of the two stands out from the paper, and they from each other. */
    @ParameterizedTest
    @EnumSource(Palette.class)
    void hardwareStandsOutByItsFillOrItsEdge(Palette palette) {
        Colour paper = palette.of(Ink.PAPER);
        double best =
                Math.max(contrast(palette.of(Ink.HARDWARE), paper), contrast(palette.of(Ink.HARDWARE_EDGE), paper));
        assertTrue(best >= 3, "hardware on " + palette + " paper");
        assertTrue(contrast(palette.of(Ink.HARDWARE), palette.of(Ink.HARDWARE_EDGE)) >= 3);
    }
}

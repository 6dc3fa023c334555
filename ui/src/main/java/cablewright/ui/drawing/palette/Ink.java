// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.palette;

/**
 * What a part of a drawing stands for; a {@link Palette} gives it its colour. The hues are those of M. Okabe and K. Ito, Color
 * Universal Design (2008), darkened or lightened where thin lines need 3 : 1 against the paper.
 */
public enum Ink {
    /** Background. */
    PAPER(0xFFFFFF, 0x1C2026),
    /** Lines of the grid, and of the finer grid of paper; meant to be fainter than all else. */
    GRID(0xE4E2DC, 0x2C323A),
    /** Lines between those of the grid, to read paper by. */
    FINE_GRID(0xF0EFEB, 0x23282F),
    /** Line of zero, frames. */
    AXIS(0x8A9099, 0x6E7783),
    /** Text. */
    TEXT(0x1F2328, 0xE8EAED),
    /** Text that should not be met first. */
    FAINT(0x57606A, 0xA3ABB6),
    /** The trace, what is selected, the wave on its way. */
    TRACE(0x0072B2, 0x56B4E9),
    /** Where a curve leaves what is shown, or the converter clips. */
    CLIP(0xD55E00, 0xFF9350),
    /** Area in which noise lies. */
    NOISE(0xD4E7F4, 0x22384A),
    /** Area to look at. */
    LOOK_HERE(0xD9ECF8, 0x233B4C),
    /** Flags that say: belongs. */
    BELONGS(0x00795A, 0x35C79C),
    /** Damage, and flags that say so. */
    DAMAGE(0xB84F00, 0xFF9350),
    /** A trace laid over for comparison. */
    OTHER_TRACE(0xB0508A, 0xE39BC4),
    /** A trace that was kept, or is seen from the other end. */
    KEPT_TRACE(0x57606A, 0xA3ABB6),
    /** Shields, outlines, the line of the record. */
    SHIELD(0x5B6470, 0x8B94A0),
    /** Copper. */
    COPPER(0xB8743A, 0xD0904F),
    /** Dielectric. */
    DIELECTRIC(0xEEE6D6, 0x4B463C),
    /** Water. */
    WATER(0x2E8FC4, 0x56B4E9),
    /** Hardware put in the line. */
    HARDWARE(0xF0E442, 0xF0E442),
    /** Outline of hardware. */
    HARDWARE_EDGE(0x37351F, 0x14140A),
    /** Impedance along the cable. */
    PROFILE(0x57606A, 0xA3ABB6),
    /** Mark of what the trace shows. */
    CLEAR(0x00795A, 0x35C79C),
    /** Mark of what it shows with doubt. */
    MARGINAL(0x7A4B00, 0xFFCF7D),
    /** Mark of what it hides. */
    HIDDEN(0xB84F00, 0xFF9350),
    /** Area of what can be seen. */
    CLEAR_AREA(0xBFE3D5, 0x1F5A49),
    /** Area of what a careful reader may find. */
    MARGINAL_AREA(0xFBE6B8, 0x5E4A1C),
    /** Area of what can't be seen. */
    HIDDEN_AREA(0xECEAE5, 0x2A2F37);

    private final int light;
    private final int dark;

    Ink(int light, int dark) {
        this.light = light;
        this.dark = dark;
    }

    int rgb(Palette palette) {
        return palette == Palette.DARK ? dark : light;
    }
}

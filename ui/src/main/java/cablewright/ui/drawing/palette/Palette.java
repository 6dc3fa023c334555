// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.palette;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Colours of a figure, 0xRRGGBB. The tones are of the set of M. Okabe and K. Ito, Color Universal Design (2008), darkened or
 * lightened where thin lines need it.
 *
 * @param paper background
 * @param ink text
 * @param soft text that should not be met first, axes
 * @param grid lines of the grid
 * @param zero line of zero
 * @param band band of the noise
 * @param clear area of what can be seen
 * @param marginal area of what a careful reader may find
 * @param hidden area of what can't be seen
 * @param copper metal of a core
 * @param metal metal of a shield
 * @param plastic dielectric
 * @param water water
 * @param tones colours of lines
 */
public record Palette(
        int paper,
        int ink,
        int soft,
        int grid,
        int zero,
        int band,
        int clear,
        int marginal,
        int hidden,
        int copper,
        int metal,
        int plastic,
        int water,
        Map<Tone, Integer> tones) {

    /** For white paper and light screens. */
    public static final Palette LIGHT = new Palette(
            0xFFFFFF,
            0x1F2328,
            0x57606A,
            0xECEAE5,
            0xB4B8BE,
            0xE1EEF7,
            0xBFE3D5,
            0xFBE6B8,
            0xECEAE5,
            0xB8743A,
            0x5B6470,
            0xEEE6D6,
            0x56B4E9,
            tones(List.of(0x0072B2, 0xD55E00, 0x00795A, 0xB0508A, 0xB07800, 0x2E8FC4, 0x24292F, 0x8A929C)));

    /** For dark screens. */
    public static final Palette DARK = new Palette(
            0x1C2026,
            0xE8EAED,
            0xA3ABB6,
            0x272C33,
            0x59616C,
            0x22323F,
            0x1F5A49,
            0x5E4A1C,
            0x2A2F37,
            0xD0904F,
            0x8B94A0,
            0x4B463C,
            0x56B4E9,
            tones(List.of(0x56B4E9, 0xFF9350, 0x35C79C, 0xE39BC4, 0xE6B94C, 0x8CD0F5, 0xE8EAED, 0x7C8692)));

    /** Copies the map. */
    public Palette {
        tones = Map.copyOf(tones);
    }

    private static Map<Tone, Integer> tones(List<Integer> colours) {
        Map<Tone, Integer> tones = new EnumMap<>(Tone.class);
        for (Tone tone : Tone.values()) {
            tones.put(tone, colours.get(tone.ordinal()));
        }
        return tones;
    }

    /**
     * Returns the colour of a tone.
     *
     * @param tone the tone
     * @return its colour
     */
    public int of(Tone tone) {
        return tones.get(tone);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.text;

import cablewright.simulator.check.VisibleText;
import java.util.List;

/**
 * What a terminal can show.
 *
 * @param unicode whether it shows characters beyond ASCII
 * @param colour whether it may be sent colours
 */
public record TerminalStyle(boolean unicode, boolean colour) {

    /** Characters and colours of a file or a plain terminal. */
    public static final TerminalStyle ASCII = new TerminalStyle(false, false);

    private static final char ESCAPE = '\u001b';
    private static final List<String> OURS =
            List.of("\u001b[0m", "\u001b[1m", "\u001b[32m", "\u001b[33m", "\u001b[36m");

    String bar() {
        return unicode ? "│" : "|";
    }

    String corner() {
        return unicode ? "└" : "+";
    }

    String dash() {
        return unicode ? "─" : "-";
    }

    String tick() {
        return unicode ? "┴" : "+";
    }

    String trace(String text) {
        return colour && !text.isEmpty() ? "\u001b[36m" + text + "\u001b[0m" : text;
    }

    /**
     * Makes a text bold where colours are allowed.
     *
     * @param text the text
     * @return the text, with the terminal's signs for bold about it
     */
    public String bold(String text) {
        return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
    }

    /**
     * Makes a text stand out as good.
     *
     * @param text the text
     * @return the text, in green where colours are allowed
     */
    public String good(String text) {
        return colour ? "\u001b[32m" + text + "\u001b[0m" : text;
    }

    /**
     * Makes a text stand out as a fault.
     *
     * @param text the text
     * @return the text, in yellow where colours are allowed, which shows on dark and on light
     */
    public String bad(String text) {
        return colour ? "\u001b[33m" + text + "\u001b[0m" : text;
    }

    /** Whether a sign of ours to the terminal stands at a place: a colour, bold, or the end of both. */
    private boolean isOurs(String text, int at) {
        return colour && OURS.stream().anyMatch(sign -> text.startsWith(sign, at));
    }

    /** Makes control characters that are not ours visible: names and titles of strangers never steer the terminal. */
    private String harmless(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        int from = 0;
        for (int at = text.indexOf(ESCAPE); at >= 0; at = text.indexOf(ESCAPE, at + 1)) {
            if (isOurs(text, at)) {
                int end = text.indexOf('m', at) + 1;
                shown.append(VisibleText.lines(text.substring(from, at))).append(text, at, end);
                from = end;
            }
        }
        return shown.append(VisibleText.lines(text.substring(from))).toString();
    }

    /**
     * Writes a text with what the terminal can show.
     *
     * @param text the text
     * @return the same text with plain spaces, its control characters made visible; without Unicode, with the signs of ours that are not ASCII written out
     */
    public String plain(String text) {
        String spaced = harmless(text).replace('\u00a0', ' ').replace('\u202f', ' ');
        if (unicode) {
            return spaced;
        }
        String spelt = spaced.replace('−', '-')
                .replace("Ω", "ohm")
                .replace("µ", "u")
                .replace("°", " deg ")
                .replace("ρ", "rho")
                .replace("√", "sqrt ")
                .replace("±", "+-")
                .replace("×", "x")
                .replace("≥", ">=")
                .replace("≤", "<=")
                .replace("…", "...")
                .replace("–", "-")
                .replace("—", "-")
                .replace("·", "-")
                .replace("→", "->")
                .replace("’", "'")
                .replace("“", "\"")
                .replace("”", "\"")
                .replace("✓", "ok")
                .replace("✗", "x");
        return spelt.replaceAll("[^\\x00-\\x7F]", "?");
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

/**
 * Text of strangers, such as names of files, made harmless to a terminal: control characters, and marks that turn the
 * direction of writing or show nothing, are written as {@code \\u001b}.
 */
public final class VisibleText {

    private VisibleText() {}

    /**
     * Makes every character of a text visible, line ends too.
     *
     * @param text the text
     * @return the same text on one line
     */
    public static String line(String text) {
        return visible(text, "");
    }

    /**
     * Makes every character of a text visible but for line feeds and tabs.
     *
     * @param text the text
     * @return the same text
     */
    public static String lines(String text) {
        return visible(text, "\n\t");
    }

    private static String visible(String text, String kept) {
        StringBuilder shown = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int c = text.codePointAt(at);
            if (isHidden(c) && kept.indexOf(c) < 0) {
                for (char unit : Character.toChars(c)) {
                    shown.append(String.format("\\u%04x", (int) unit));
                }
            } else {
                shown.appendCodePoint(c);
            }
        }
        return shown.toString();
    }

    private static boolean isHidden(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }
}

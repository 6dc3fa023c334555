// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

/** Characters that a text of a file may hold. */
final class Characters {

    private Characters() {}

    /**
     * Returns whether a character is safe to show on one line: no control character, which could steer a terminal, no
     * separator of lines or paragraphs, none that turns the direction of what follows, and no half of a character.
     */
    static boolean isPrintable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                false;
            default -> !turnsDirection(codePoint);
        };
    }

    private static boolean turnsDirection(int codePoint) {
        return codePoint >= 0x202A && codePoint <= 0x202E || codePoint >= 0x2066 && codePoint <= 0x2069;
    }
}

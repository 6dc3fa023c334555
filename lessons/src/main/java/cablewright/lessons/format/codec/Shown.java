// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.databind.JsonNode;

/** Values of a file as messages show them: short, on one line, and harmless to a terminal. */
public final class Shown {

    private static final int MOST_CHARACTERS = 60;

    private Shown() {}

    /** Returns a value of a file, shortened. */
    public static String value(JsonNode node) {
        if (node.isObject()) {
            return "an object with " + node.size() + (node.size() == 1 ? " field" : " fields");
        }
        if (node.isArray()) {
            return "a list of " + node.size();
        }
        return node.isTextual() ? "\"" + text(node.textValue()) + "\"" : text(node.asText());
    }

    /** Returns a text, shortened, with a space for each control character. */
    public static String text(String text) {
        String head = text.length() > MOST_CHARACTERS ? text.substring(0, MOST_CHARACTERS) + "…" : text;
        return head.codePoints()
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? ' ' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import cablewright.simulator.file.BoundedLines;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** The lines of a Touchstone file that say something: comments and empty lines are passed over. */
final class TouchstoneLines {

    /** Largest file that is read [bytes]. */
    static final int MOST_BYTES = 256 << 20;

    private static final int MOST_LINE = 100_000;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final String BYTE_ORDER_MARK = "\u00ef\u00bb\u00bf";

    private final String file;
    private final BoundedLines lines;
    private String line = "";

    /** Reads a stream as it goes along; what is not ASCII can only stand in comments. */
    TouchstoneLines(String file, InputStream in) {
        this.file = file;
        this.lines = new BoundedLines(in, StandardCharsets.ISO_8859_1, MOST_LINE);
    }

    /** Goes on to the next line that says something; false at the end of the file. */
    boolean advance() throws IOException {
        while (lines.advance()) {
            if (lines.bytesTaken() > MOST_BYTES) {
                throw wrong("size of the file", "over " + MOST_BYTES + " bytes", "at most " + MOST_BYTES + " bytes");
            }
            line = text();
            int comment = line.indexOf('!');
            line = (comment < 0 ? line : line.substring(0, comment)).strip();
            if (!line.isEmpty()) {
                return true;
            }
        }
        line = "";
        return false;
    }

    private String text() throws TouchstoneFormatException {
        try {
            String text = lines.text();
            return lines.number() == 1 && text.startsWith(BYTE_ORDER_MARK) ? text.substring(3) : text;
        } catch (IllegalArgumentException e) {
            throw wrong("length of the line", "over " + MOST_LINE, "at most " + MOST_LINE);
        }
    }

    String line() {
        return line;
    }

    int number() {
        return (int) Math.min(Integer.MAX_VALUE, lines.number());
    }

    String file() {
        return file;
    }

    TouchstoneFormatException wrong(String what, String value, String allowed) {
        return wrong(number(), what, value, allowed);
    }

    TouchstoneFormatException wrong(int where, String what, String value, String allowed) {
        return new TouchstoneFormatException(file, Math.max(1, where), what, value, allowed);
    }

    /** Reads a number as people write it: no hexadecimals, no type letters, no infinities. */
    double numberOf(String word) throws TouchstoneFormatException {
        if (word.length() > 60 || !NUMBER.matcher(word).matches()) {
            throw wrong("a number", word, "a decimal number such as 12.5 or 1.25e-3");
        }
        double value = Double.parseDouble(word);
        if (Double.isInfinite(value)) {
            throw wrong("a number", word, "a number below 1.8e308");
        }
        return value;
    }
}

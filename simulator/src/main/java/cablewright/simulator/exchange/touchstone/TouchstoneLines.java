// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The lines of a Touchstone file that say something: comments and empty lines are passed over. */
final class TouchstoneLines {

    /** Largest file that is read [bytes]. */
    static final int MOST_BYTES = 256 << 20;

    private static final int MOST_LINE = 100_000;

    private final String file;
    private final String text;
    private int next;
    private int number;
    private String line = "";

    TouchstoneLines(String file, String text) {
        this.file = file;
        this.text = text;
    }

    /** Reads at most {@value #MOST_BYTES} bytes; what is not ASCII can only stand in comments. */
    static TouchstoneLines of(String file, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new TouchstoneFormatException(
                    file, 1, "size of the file", "over " + MOST_BYTES + " bytes", "at most " + MOST_BYTES + " bytes");
        }
        boolean marked = bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB;
        int skipped = marked ? 3 : 0;
        return new TouchstoneLines(
                file, new String(bytes, skipped, bytes.length - skipped, StandardCharsets.ISO_8859_1));
    }

    /** Goes on to the next line that says something; false at the end of the file. */
    boolean advance() throws TouchstoneFormatException {
        while (next < text.length()) {
            int start = next;
            int end = start;
            while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
                end++;
            }
            boolean pair = end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n';
            next = end + (pair ? 2 : 1);
            number++;
            if (end - start > MOST_LINE) {
                throw wrong("length of the line", Integer.toString(end - start), "at most " + MOST_LINE);
            }
            line = text.substring(start, end);
            int comment = line.indexOf('!');
            line = (comment < 0 ? line : line.substring(0, comment)).strip();
            if (!line.isEmpty()) {
                return true;
            }
        }
        line = "";
        return false;
    }

    String line() {
        return line;
    }

    int number() {
        return number;
    }

    String file() {
        return file;
    }

    TouchstoneFormatException wrong(String what, String value, String allowed) {
        return wrong(number, what, value, allowed);
    }

    TouchstoneFormatException wrong(int where, String what, String value, String allowed) {
        return new TouchstoneFormatException(file, Math.max(1, where), what, value, allowed);
    }

    /** Reads a number as people write it: no hexadecimals, no type letters, no infinities. */
    double numberOf(String word) throws TouchstoneFormatException {
        if (word.length() > 60 || !word.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?")) {
            throw wrong("a number", word, "a decimal number such as 12.5 or 1.25e-3");
        }
        double value = Double.parseDouble(word);
        if (Double.isInfinite(value)) {
            throw wrong("a number", word, "a number below 1.8e308");
        }
        return value;
    }
}

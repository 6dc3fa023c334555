// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import java.io.IOException;

/** Says that a file of another program can't be read: in which file and line, what was found and what is allowed there. */
public class ExchangeFormatException extends IOException {

    private static final long serialVersionUID = 1L;

    private static final int MOST_SHOWN = 60;

    private final String file;
    private final int line;
    private final String value;
    private final String allowed;

    /** Says what is wrong in which line of a file. */
    public ExchangeFormatException(String file, int line, String what, String value, String allowed) {
        super(file + ", line " + line + ": " + what + " is \"" + shown(value) + "\"; allowed is " + allowed);
        this.file = file;
        this.line = line;
        this.value = shown(value);
        this.allowed = allowed;
    }

    /** Cuts what is long and leaves out what no one can read. */
    private static String shown(String value) {
        String readable = value.replaceAll("[^\\x20-\\x7e]", "?");
        return readable.length() <= MOST_SHOWN ? readable : readable.substring(0, MOST_SHOWN) + "...";
    }

    public String file() {
        return file;
    }

    /**
     * Returns the place.
     *
     * @return number of the line, from 1
     */
    public int line() {
        return line;
    }

    /**
     * Returns what was found.
     *
     * @return the words of the file, cut if they are long
     */
    public String value() {
        return value;
    }

    public String allowed() {
        return allowed;
    }
}

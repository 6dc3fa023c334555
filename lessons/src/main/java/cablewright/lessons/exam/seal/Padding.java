// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import java.util.Arrays;

/**
 * Fills text with blanks to one of a few lengths, so that the length of what is sealed tells nothing of it: powers of two
 * from 64 KiB on.
 */
public final class Padding {

    /** The least length [bytes]. */
    public static final int LEAST_BYTES = 64 * 1024;

    private Padding() {}

    /**
     * Fills up.
     *
     * @param text a text after which blanks mean nothing, such as JSON
     * @return the text with blanks behind it
     */
    public static byte[] filled(byte[] text) {
        int length = LEAST_BYTES;
        while (length < text.length) {
            length *= 2;
        }
        byte[] filled = Arrays.copyOf(text, length);
        Arrays.fill(filled, text.length, length, (byte) ' ');
        return filled;
    }
}

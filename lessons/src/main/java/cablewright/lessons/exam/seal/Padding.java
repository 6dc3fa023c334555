// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import java.util.Arrays;

/**
 * Fills text with blanks to one of a few lengths, so that the length of what is sealed gives nothing away: powers of two
 * from 64 KiB on.
 */
public final class Padding {

    /** The least length [bytes]. */
    public static final int LEAST_BYTES = 64 * 1024;

    private static final long HEADER_AND_NONCE = 168 + 16;
    private static final long TAG = 16;
    private static final long CHUNK = 65_536;

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

    /**
     * Returns whether a sealed file has one of the lengths that padded text has once it is sealed to one key: a cut shows even
     * before it is opened. The age format adds a header of 168 bytes, a nonce of 16, and a tag of 16 to each 64 KiB.
     *
     * @param sealedBytes length of the sealed file
     * @return whether it is one of those lengths
     */
    public static boolean isWhole(long sealedBytes) {
        long length = LEAST_BYTES;
        while (HEADER_AND_NONCE + length + TAG * (length / CHUNK) < sealedBytes) {
            length *= 2;
        }
        return HEADER_AND_NONCE + length + TAG * (length / CHUNK) == sealedBytes;
    }
}

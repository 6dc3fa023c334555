// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Short names of bytes, by SHA-256. */
public final class Receipt {

    /** Crockford's base 32: no I, L, O or U, which are misread. */
    private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int CHARACTERS = 16;
    private static final int GROUP = 4;
    private static final int BITS = 5;

    private Receipt() {}

    /**
     * Returns the receipt of sealed answers: the first 80 bits of the SHA-256 of the file, in four groups of four letters.
     *
     * @param file the bytes of the file that was handed in
     * @return such as {@code 7K2M-Q0RT-93XA-B5ZC}
     */
    public static String of(byte[] file) {
        byte[] hash = hash(file);
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < CHARACTERS; i++) {
            int value = 0;
            for (int bit = i * BITS; bit < (i + 1) * BITS; bit++) {
                value = 2 * value + ((hash[bit / 8] >> (7 - bit % 8)) & 1);
            }
            code.append(i > 0 && i % GROUP == 0 ? "-" : "").append(LETTERS.charAt(value));
        }
        return code.toString();
    }

    /**
     * Returns the SHA-256 of bytes.
     *
     * @param bytes the bytes
     * @return 64 hexadecimal digits
     */
    public static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(hash(bytes));
    }

    private static byte[] hash(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }
}

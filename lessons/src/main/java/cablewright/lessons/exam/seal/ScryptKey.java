// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import com.exceptionfactory.jagged.framework.crypto.CipherKey;
import java.nio.charset.StandardCharsets;
import org.bouncycastle.crypto.generators.SCrypt;

/**
 * The key that age wraps a file key with under a passphrase: scrypt (RFC 7914) with salt
 * {@code "age-encryption.org/v1/scrypt" ‖ salt}, N = 2^work, r = 8, p = 1, 32 bytes. Source: C2SP age specification, "The
 * scrypt recipient type".
 */
final class ScryptKey {

    /** The type of the stanza. */
    static final String TYPE = "scrypt";

    static final int SALT_BYTES = 16;

    /** What the age program takes too: about a second and 256 MiB. */
    static final int WORK = 18;

    /** More would let a bad file fill the memory. */
    static final int MOST_WORK = 20;

    private static final byte[] LABEL = "age-encryption.org/v1/scrypt".getBytes(StandardCharsets.US_ASCII);
    private static final int BLOCK_SIZE = 8;
    private static final int KEY_BYTES = 32;

    private ScryptKey() {}

    static CipherKey of(String passphrase, byte[] salt, int work) {
        byte[] labelled = new byte[LABEL.length + salt.length];
        System.arraycopy(LABEL, 0, labelled, 0, LABEL.length);
        System.arraycopy(salt, 0, labelled, LABEL.length, salt.length);
        byte[] secret = passphrase.getBytes(StandardCharsets.UTF_8);
        return new CipherKey(SCrypt.generate(secret, labelled, 1 << work, BLOCK_SIZE, 1, KEY_BYTES));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * Names of made exercises from which the request cannot be read back: PBKDF2 (RFC 8018, section 5.2, with HMAC-SHA-256) of all
 * that is in the request. Who suspects a certain seed can still try it, as anybody can who makes the exercise of that seed and
 * compares; the iterations keep many guesses from being cheaper than that way.
 */
final class OpaqueId {

    private static final String PREFIX = "made-";
    private static final byte[] SALT = "cablewright made exercise".getBytes(StandardCharsets.UTF_8);
    private static final int ITERATIONS = 2_000;
    private static final int BITS = 80;
    private static final int BASE = 32;
    private static final int DIGITS = 16;

    private OpaqueId() {}

    static String of(GenerationRequest request) {
        // Names, not places in the enumerations, so that another kind or family changes no name that was given.
        String text = String.join(
                "|",
                Long.toString(request.seed()),
                request.families().toString(),
                request.damage().toString(),
                Long.toString(Math.round(100 * request.difficulty())),
                request.contrast().name());
        try {
            byte[] key = SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                    .generateSecret(new PBEKeySpec(text.toCharArray(), SALT, ITERATIONS, BITS))
                    .getEncoded();
            String digits = new BigInteger(1, key).toString(BASE);
            return PREFIX + "0".repeat(DIGITS - digits.length()) + digits;
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java has no PBKDF2WithHmacSHA256, which every Java 17 must have", e);
        }
    }
}

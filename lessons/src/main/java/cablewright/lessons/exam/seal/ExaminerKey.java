// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import com.exceptionfactory.jagged.bech32.Bech32;
import com.exceptionfactory.jagged.x25519.X25519KeyPairGenerator;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.spec.NamedParameterSpec;
import java.security.spec.XECPrivateKeySpec;
import java.security.spec.XECPublicKeySpec;
import java.util.Locale;
import javax.crypto.KeyAgreement;

/**
 * An examiner's key pair (X25519, RFC 7748) in the words of age: a secret key {@code AGE-SECRET-KEY-1…} that opens, and a
 * public key {@code age1…} to which papers and answers are sealed.
 */
public final class ExaminerKey {

    private static final BigInteger BASE_POINT = BigInteger.valueOf(9);
    private static final String CURVE = "X25519";

    private final String secret;
    private final String publicKey;

    private ExaminerKey(String secret, String publicKey) {
        this.secret = secret;
        this.publicKey = publicKey;
    }

    /**
     * Makes a new key pair from the system's source of randomness.
     *
     * @return the pair
     */
    public static ExaminerKey make() {
        try {
            byte[] encoded =
                    new X25519KeyPairGenerator().generateKeyPair().getPrivate().getEncoded();
            return of(new String(encoded, StandardCharsets.US_ASCII));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java runtime has no X25519; use one of version 17 or later", e);
        }
    }

    /**
     * Takes a secret key that was written down.
     *
     * @param secret the key, {@code AGE-SECRET-KEY-1…}; small letters and gaps are taken too
     * @return the pair
     * @throws IllegalArgumentException if it is no such key or was mistyped
     */
    public static ExaminerKey of(String secret) {
        String upper = secret.replaceAll("\\s+", "").toUpperCase(Locale.ROOT);
        if (!upper.startsWith("AGE-SECRET-KEY-1")) {
            throw new IllegalArgumentException(
                    "the secret key does not begin with AGE-SECRET-KEY-1; take the line that does");
        }
        try {
            byte[] scalar = Bech32.getDecoder().decode(upper).getData();
            return new ExaminerKey(upper, publicOf(scalar));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "the secret key was mistyped or cut: its check letters do not fit; compare it letter by letter", e);
        }
    }

    /** The scalar times the base point u = 9 (RFC 7748, section 6.1). */
    private static String publicOf(byte[] scalar) throws GeneralSecurityException {
        KeyFactory factory = KeyFactory.getInstance(CURVE);
        PublicKey base = factory.generatePublic(new XECPublicKeySpec(NamedParameterSpec.X25519, BASE_POINT));
        KeyAgreement agreement = KeyAgreement.getInstance(CURVE);
        agreement.init(factory.generatePrivate(new XECPrivateKeySpec(NamedParameterSpec.X25519, scalar)));
        agreement.doPhase(base, true);
        return Bech32.getEncoder().encode("age", agreement.generateSecret()).toString();
    }

    /**
     * Returns the key that opens. Who has it reads every paper and every answer.
     *
     * @return {@code AGE-SECRET-KEY-1…}
     */
    public String secret() {
        return secret;
    }

    /**
     * Returns the key to which papers and answers are sealed. Anybody may have it.
     *
     * @return {@code age1…}
     */
    public String publicKey() {
        return publicKey;
    }

    /**
     * Checks a public key that was typed or read.
     *
     * @param publicKey the key
     * @return the key without blanks around it
     * @throws IllegalArgumentException if it is no public key of age or was mistyped
     */
    public static String checkedPublicKey(String publicKey) {
        String clean = publicKey.strip();
        if (!clean.startsWith("age1")) {
            throw new IllegalArgumentException("the public key does not begin with age1; take the line that does");
        }
        try {
            if (Bech32.getDecoder().decode(clean).getData().length == 32) {
                return clean;
            }
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "the public key was mistyped or cut: its check letters do not fit; copy it anew", e);
        }
        throw new IllegalArgumentException("the public key has the wrong length; copy it anew");
    }

    /** Keeps the secret out of messages and logs. */
    @Override
    public String toString() {
        return "key of " + publicKey;
    }
}

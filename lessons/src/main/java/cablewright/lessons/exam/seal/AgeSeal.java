// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import com.exceptionfactory.jagged.RecipientStanzaReader;
import com.exceptionfactory.jagged.RecipientStanzaWriter;
import com.exceptionfactory.jagged.UnsupportedRecipientStanzaException;
import com.exceptionfactory.jagged.framework.stream.StandardDecryptingChannelFactory;
import com.exceptionfactory.jagged.framework.stream.StandardEncryptingChannelFactory;
import com.exceptionfactory.jagged.x25519.X25519RecipientStanzaReaderFactory;
import com.exceptionfactory.jagged.x25519.X25519RecipientStanzaWriterFactory;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.List;

/**
 * Seals and opens bytes in the open age format (C2SP specification age-encryption.org/v1), so that the {@code age} program
 * opens what is sealed here and the other way round.
 */
public final class AgeSeal {

    private static final byte[] FIRST = "age-encryption.org/v1\n".getBytes(StandardCharsets.US_ASCII);
    private static final int CHUNK = 65_536;

    private AgeSeal() {}

    /**
     * Seals to a public key.
     *
     * @param publicKey the examiner's public key
     * @param plain what to seal
     * @return the sealed bytes; they differ each time
     * @throws IllegalArgumentException if it is no public key
     */
    public static byte[] sealTo(String publicKey, byte[] plain) {
        try {
            String checked = ExaminerKey.checkedPublicKey(publicKey);
            return sealed(X25519RecipientStanzaWriterFactory.newRecipientStanzaWriter(checked), plain);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java runtime lacks a part of the age format; use version 17", e);
        }
    }

    /**
     * Seals under a passphrase, stretched by scrypt.
     *
     * @param passphrase the passphrase
     * @param plain what to seal
     * @return the sealed bytes
     */
    public static byte[] sealUnder(String passphrase, byte[] plain) {
        try {
            return sealed(new ScryptStanzaWriter(passphrase), plain);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java runtime lacks a part of the age format; use version 17", e);
        }
    }

    private static byte[] sealed(RecipientStanzaWriter recipient, byte[] plain) throws GeneralSecurityException {
        ByteArrayOutputStream out = new ByteArrayOutputStream(plain.length + 1024);
        try (WritableByteChannel channel = new StandardEncryptingChannelFactory()
                .newEncryptingChannel(Channels.newChannel(out), List.of(recipient))) {
            ByteBuffer left = ByteBuffer.wrap(plain);
            while (left.hasRemaining()) {
                channel.write(left);
            }
        } catch (IOException e) {
            throw new IllegalStateException("memory could not be written", e);
        }
        return out.toByteArray();
    }

    /**
     * Opens what was sealed to a key.
     *
     * @param key the examiner's key
     * @param sealed the sealed bytes
     * @return what was sealed
     * @throws SealException if they do not open; nothing of them is given out then
     */
    public static byte[] open(ExaminerKey key, byte[] sealed) throws SealException {
        try {
            return opened(X25519RecipientStanzaReaderFactory.newRecipientStanzaReader(key.secret()), sealed);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java runtime lacks a part of the age format; use version 17", e);
        }
    }

    /**
     * Opens what was sealed under a passphrase.
     *
     * @param passphrase the passphrase
     * @param sealed the sealed bytes
     * @return what was sealed
     * @throws SealException if they do not open
     */
    public static byte[] openUnder(String passphrase, byte[] sealed) throws SealException {
        return opened(new ScryptStanzaReader(passphrase), sealed);
    }

    /**
     * Recognises sealed bytes by how they begin.
     *
     * @param bytes some bytes
     * @return whether they begin as the age format does
     */
    public static boolean isSealed(byte[] bytes) {
        return bytes.length >= FIRST.length && Arrays.equals(Arrays.copyOf(bytes, FIRST.length), FIRST);
    }

    private static byte[] opened(RecipientStanzaReader reader, byte[] sealed) throws SealException {
        if (!isSealed(sealed)) {
            throw new SealException(SealException.Fault.NOT_SEALED, null);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream(sealed.length);
        try (ReadableByteChannel channel = new StandardDecryptingChannelFactory()
                .newDecryptingChannel(Channels.newChannel(new ByteArrayInputStream(sealed)), List.of(reader))) {
            ByteBuffer buffer = ByteBuffer.allocate(CHUNK);
            while (channel.read(buffer) >= 0) {
                out.write(buffer.array(), 0, buffer.position());
                buffer.clear();
            }
        } catch (UnsupportedRecipientStanzaException e) {
            throw new SealException(SealException.Fault.OTHER_KEY, e);
        } catch (GeneralSecurityException
                | IOException
                | IllegalArgumentException
                | java.nio.BufferUnderflowException e) {
            throw new SealException(SealException.Fault.CHANGED, e);
        }
        return out.toByteArray();
    }
}

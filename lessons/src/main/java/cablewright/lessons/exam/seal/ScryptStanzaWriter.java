// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import com.exceptionfactory.jagged.FileKey;
import com.exceptionfactory.jagged.RecipientStanza;
import com.exceptionfactory.jagged.RecipientStanzaWriter;
import com.exceptionfactory.jagged.framework.crypto.FileKeyEncryptorFactory;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;

/** Wraps a file key under a passphrase. */
final class ScryptStanzaWriter implements RecipientStanzaWriter {

    private final String passphrase;

    ScryptStanzaWriter(String passphrase) {
        this.passphrase = passphrase;
    }

    /** Type, arguments and body of one entry of the header. */
    private record Stanza(String type, List<String> arguments, byte[] wrapped) implements RecipientStanza {
        @Override
        public String getType() {
            return type;
        }

        @Override
        public List<String> getArguments() {
            return arguments;
        }

        @Override
        public byte[] getBody() {
            return wrapped.clone();
        }
    }

    @Override
    public Iterable<RecipientStanza> getRecipientStanzas(FileKey fileKey) throws GeneralSecurityException {
        byte[] salt = new byte[ScryptKey.SALT_BYTES];
        new SecureRandom().nextBytes(salt);
        byte[] wrapped = new FileKeyEncryptorFactory()
                .newFileKeyEncryptor()
                .getEncryptedFileKey(fileKey, ScryptKey.of(passphrase, salt, ScryptKey.WORK))
                .getEncoded();
        String encodedSalt = Base64.getEncoder().withoutPadding().encodeToString(salt);
        return List.of(new Stanza(ScryptKey.TYPE, List.of(encodedSalt, String.valueOf(ScryptKey.WORK)), wrapped));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import com.exceptionfactory.jagged.FileKey;
import com.exceptionfactory.jagged.RecipientStanza;
import com.exceptionfactory.jagged.RecipientStanzaReader;
import com.exceptionfactory.jagged.UnsupportedRecipientStanzaException;
import com.exceptionfactory.jagged.framework.crypto.EncryptedFileKey;
import com.exceptionfactory.jagged.framework.crypto.FileKeyDecryptorFactory;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/** Unwraps a file key under a passphrase. The stanza must be the only one, as the age specification demands. */
final class ScryptStanzaReader implements RecipientStanzaReader {

    private final String passphrase;

    ScryptStanzaReader(String passphrase) {
        this.passphrase = passphrase;
    }

    @Override
    public FileKey getFileKey(Iterable<RecipientStanza> stanzas) throws GeneralSecurityException {
        List<RecipientStanza> all = new ArrayList<>();
        stanzas.forEach(all::add);
        if (all.size() != 1 || !all.get(0).getType().equals(ScryptKey.TYPE)) {
            throw new UnsupportedRecipientStanzaException("it is not sealed under a passphrase");
        }
        List<String> arguments = all.get(0).getArguments();
        if (arguments.size() != 2 || !arguments.get(1).matches("[1-9][0-9]?")) {
            throw new GeneralSecurityException("the scrypt stanza needs a salt and a work factor");
        }
        int work = Integer.parseInt(arguments.get(1));
        byte[] salt = Base64.getDecoder().decode(arguments.get(0));
        if (work > ScryptKey.MOST_WORK || salt.length != ScryptKey.SALT_BYTES) {
            throw new GeneralSecurityException(
                    "the work factor is " + work + "; at most " + ScryptKey.MOST_WORK + " is done here");
        }
        try {
            return new FileKeyDecryptorFactory()
                    .newFileKeyDecryptor()
                    .getFileKey(new EncryptedFileKey(all.get(0).getBody()), ScryptKey.of(passphrase, salt, work));
        } catch (GeneralSecurityException e) {
            throw new UnsupportedRecipientStanzaException("the passphrase is another one");
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import org.bouncycastle.crypto.generators.SCrypt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SealTest {

    private static final byte[] PLAIN = "the cable".repeat(20_000).getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private static SealException.Fault fault(ExaminerKey key, byte[] sealed) {
        return assertThrows(SealException.class, () -> AgeSeal.open(key, sealed))
                .fault();
    }

    @Test
    void everyChangedByteIsSeen() {
        ExaminerKey key = ExaminerKey.make();
        byte[] sealed = AgeSeal.sealTo(key.publicKey(), PLAIN);
        for (int at = 0; at < sealed.length; at += at < 400 ? 1 : 4_999) {
            byte[] changed = sealed.clone();
            changed[at] ^= 1;
            fault(key, changed);
        }
    }

    @Test
    void everyCutIsSeen() {
        ExaminerKey key = ExaminerKey.make();
        byte[] sealed = AgeSeal.sealTo(key.publicKey(), PLAIN);
        for (int length = 0; length < sealed.length; length += length < 400 ? 1 : 8_191) {
            fault(key, Arrays.copyOf(sealed, length));
        }
        assertEquals(SealException.Fault.CHANGED, fault(key, Arrays.copyOf(sealed, sealed.length - 1)));
        assertEquals(SealException.Fault.CHANGED, fault(key, Arrays.copyOf(sealed, sealed.length + 1)));
    }

    @Test
    void anotherKeyIsToldFromAChange() {
        byte[] sealed = AgeSeal.sealTo(ExaminerKey.make().publicKey(), PLAIN);

        assertEquals(SealException.Fault.OTHER_KEY, fault(ExaminerKey.make(), sealed));
        assertEquals(SealException.Fault.NOT_SEALED, fault(ExaminerKey.make(), PLAIN));
        assertThrows(SealException.class, () -> AgeSeal.openUnder("x", sealed));
    }

    @Test
    void aWrongPassphraseIsSaid() throws SealException {
        byte[] sealed = AgeSeal.sealUnder("tide lamp", PLAIN);

        assertArrayEquals(PLAIN, AgeSeal.openUnder("tide lamp", sealed));
        SealException e = assertThrows(SealException.class, () -> AgeSeal.openUnder("tide lamb", sealed));
        assertEquals(SealException.Fault.OTHER_KEY, e.fault());
    }

    @Test
    void theSameTextSealsToOtherBytesEachTime() {
        String publicKey = ExaminerKey.make().publicKey();
        assertNotEquals(
                Arrays.toString(AgeSeal.sealTo(publicKey, PLAIN)), Arrays.toString(AgeSeal.sealTo(publicKey, PLAIN)));
    }

    /** RFC 7914, section 12, third vector. */
    @Test
    void scryptIsThatOfTheRfc() {
        byte[] made = SCrypt.generate(
                "pleaseletmein".getBytes(StandardCharsets.US_ASCII),
                "SodiumChloride".getBytes(StandardCharsets.US_ASCII),
                16_384,
                8,
                1,
                64);
        assertEquals(
                "7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2"
                        + "d5432955613f0fcf62d49705242a9af9e61e85dc0d651e40dfcf017b45575887",
                HexFormat.of().formatHex(made));
    }

    @Test
    void keysThatWereMistypedAreRefused() {
        ExaminerKey key = ExaminerKey.make();
        String secret = key.secret();
        char last = secret.charAt(30) == 'Q' ? 'P' : 'Q';
        String mistyped = secret.substring(0, 30) + last + secret.substring(31);

        assertThrows(IllegalArgumentException.class, () -> ExaminerKey.of(mistyped));
        assertThrows(IllegalArgumentException.class, () -> ExaminerKey.of(key.publicKey()));
        assertThrows(IllegalArgumentException.class, () -> ExaminerKey.checkedPublicKey(secret));
        assertThrows(IllegalArgumentException.class, () -> ExaminerKey.checkedPublicKey(key.publicKey() + "q"));
        assertEquals(
                key.publicKey(),
                ExaminerKey.of(" " + secret.toLowerCase(java.util.Locale.ROOT) + "\n")
                        .publicKey());
    }

    @Test
    void theSecretNeverShowsInMessages() {
        ExaminerKey key = ExaminerKey.make();
        assertFalse(key.toString().contains(key.secret().substring(16)));
    }

    @Test
    void aKeyFileIsItsOwnersAlone() throws IOException {
        Path file = folder.resolve("examiner.key");
        ExaminerKey key = ExaminerKey.make();
        KeyFile.write(file, key, Instant.EPOCH);

        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertEquals(key.secret(), KeyFile.read(file).secret());
        assertThrows(FileAlreadyExistsException.class, () -> KeyFile.write(file, ExaminerKey.make(), Instant.EPOCH));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-r-----", "rw----r--", "rw--w----", "rwxrwxrwx"})
    void aKeyFileThatOthersCanReadIsRefusedWithWhatToDo(String permissions) throws IOException {
        Path file = folder.resolve("examiner.key");
        KeyFile.write(file, ExaminerKey.make(), Instant.EPOCH);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));

        IOException e = assertThrows(IOException.class, () -> KeyFile.read(file));
        assertTrue(e.getMessage().contains("chmod 600 " + file), e.getMessage());
    }

    @Test
    void receiptsFollowFromTheBytes() {
        // SHA-256 of "abc" begins ba7816bf 8f01cfea 4141 (FIPS 180-4, example of the NIST); the receipt was worked out
        // with
        // Python's hashlib.
        byte[] abc = "abc".getBytes(StandardCharsets.US_ASCII);
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Receipt.sha256(abc));
        assertEquals("Q9W1-DFWF-077Y-MGA1", Receipt.of(abc));
    }

    @Test
    void paddingHidesTheLength() {
        assertEquals(65_536, Padding.filled(new byte[1]).length);
        assertEquals(65_536, Padding.filled(new byte[65_536]).length);
        assertEquals(131_072, Padding.filled(new byte[65_537]).length);
        assertEquals(' ', Padding.filled(new byte[1])[65_535]);
        for (int length : new int[] {1, 65_537, 300_000}) {
            int sealed = AgeSeal.sealTo(ExaminerKey.make().publicKey(), Padding.filled(new byte[length])).length;
            assertTrue(Padding.isWhole(sealed));
            assertFalse(Padding.isWhole(sealed - 1));
            assertFalse(Padding.isWhole(sealed + 1));
        }
    }
}

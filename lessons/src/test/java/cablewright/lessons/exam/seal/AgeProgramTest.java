// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against the age program of Debian (package age, 1.1.1 in Debian 12), which must be there: no skipping. */
class AgeProgramTest {

    @TempDir
    private Path folder;

    @BeforeAll
    static void theProgramIsThere() throws Exception {
        Process age =
                new ProcessBuilder("age", "--version").redirectErrorStream(true).start();
        age.getInputStream().readAllBytes();
        assertEquals(0, age.waitFor(), "install it: sh .setup/install-packages.sh test");
    }

    private byte[] run(String typed, String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().write(typed.getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().close();
        byte[] said = process.getInputStream().readAllBytes();
        assertEquals(0, process.waitFor(), () -> new String(said, StandardCharsets.UTF_8));
        return said;
    }

    private static byte[] bytes(int count) {
        byte[] bytes = new byte[count];
        new Random(count).nextBytes(bytes);
        return bytes;
    }

    /** Around the chunk of 64 KiB of the format. */
    @ParameterizedTest
    @ValueSource(ints = {1, 65_535, 65_536, 65_537, 200_000})
    void itOpensWhatIsSealedHereAndTheOtherWayRound(int count) throws Exception {
        ExaminerKey key = ExaminerKey.make();
        KeyFile.write(folder.resolve("key"), key, Instant.EPOCH);
        byte[] plain = bytes(count);

        Files.write(folder.resolve("sealed.age"), AgeSeal.sealTo(key.publicKey(), plain));
        run("", "age", "-d", "-i", "key", "-o", "opened", "sealed.age");
        Files.write(folder.resolve("plain"), plain);
        run("", "age", "-r", key.publicKey(), "-o", "theirs.age", "plain");

        assertArrayEquals(plain, Files.readAllBytes(folder.resolve("opened")));
        assertArrayEquals(plain, AgeSeal.open(key, Files.readAllBytes(folder.resolve("theirs.age"))));
    }

    @Test
    void itMakesKeysThatAreReadHereAndFindsTheSamePublicKey() throws Exception {
        run("", "age-keygen", "-o", "theirs");
        KeyFile.write(folder.resolve("ours"), ExaminerKey.make(), Instant.EPOCH);

        for (String name : List.of("theirs", "ours")) {
            String theirs = new String(run("", "age-keygen", "-y", name), StandardCharsets.UTF_8).strip();
            assertEquals(theirs, KeyFile.read(folder.resolve(name)).publicKey());
        }
    }

    /** The program takes passphrases from a terminal only; {@code script} (Debian: bsdutils, essential) lends it one. */
    @Test
    void itOpensABackupUnderItsPassphraseAndTheOtherWayRound() throws Exception {
        String passphrase = "tide-lamp-quay-seven";
        byte[] plain = KeyFile.text(ExaminerKey.make(), Instant.EPOCH).getBytes(StandardCharsets.UTF_8);

        Files.write(folder.resolve("backup.age"), AgeSeal.sealUnder(passphrase, plain));
        run(passphrase + "\n", "script", "-qec", "age -d -o opened backup.age", "/dev/null");
        Files.write(folder.resolve("plain"), plain);
        run(passphrase + "\n" + passphrase + "\n", "script", "-qec", "age -p -o theirs.age plain", "/dev/null");

        assertArrayEquals(plain, Files.readAllBytes(folder.resolve("opened")));
        byte[] theirs = Files.readAllBytes(folder.resolve("theirs.age"));
        assertTrue(AgeSeal.isSealed(theirs));
        assertArrayEquals(plain, AgeSeal.openUnder(passphrase, theirs));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicSaveTest {

    @TempDir
    Path folder;

    @Test
    void theFileIsThereWholeAndNothingBesideIt() throws IOException {
        Path file = folder.resolve("a.json");
        Files.writeString(file, "old");

        AtomicSave.save(file, new byte[] {1, 2, 3});

        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(file));
        assertEquals(List.of(file), list());
    }

    @Test
    void whereItCanNotBeSavedNothingIsLeftBehind() throws IOException {
        Path taken = Files.createDirectory(folder.resolve("taken"));
        Path inside = Files.writeString(taken.resolve("inside"), "x");

        assertThrows(IOException.class, () -> AtomicSave.save(taken, new byte[] {1}));

        assertEquals("x", Files.readString(inside));
        assertEquals(List.of(taken), list());
    }

    @Test
    void permissionsOfTheFileStay() throws IOException {
        Path file = Files.writeString(folder.resolve("private.json"), "old");
        Set<PosixFilePermission> own = PosixFilePermissions.fromString("rw-------");
        Files.setPosixFilePermissions(file, own);

        AtomicSave.save(file, new byte[] {1});

        assertEquals(own, Files.getPosixFilePermissions(file));
    }

    @Test
    void symbolicLinkStaysAndWhatItPointsToIsSaved() throws IOException {
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        Path file = Files.writeString(shelf.resolve("real.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("shelf", "real.json"));
        Path ahead = Files.createSymbolicLink(folder.resolve("ahead.json"), Path.of("shelf", "new.json"));

        AtomicSave.save(link, new byte[] {1});
        AtomicSave.save(ahead, new byte[] {2});

        assertTrue(Files.isSymbolicLink(link) && Files.isSymbolicLink(ahead));
        assertArrayEquals(new byte[] {1}, Files.readAllBytes(file));
        assertArrayEquals(new byte[] {2}, Files.readAllBytes(shelf.resolve("new.json")));
    }

    /** 255 bytes is the longest name of usual Linux file systems (path_resolution(7), NAME_MAX in limits.h). */
    @Test
    void nameAsLongAsTheSystemAllowsIsSaved() throws IOException {
        Path file = folder.resolve("n".repeat(250) + ".json");
        AtomicSave.save(file, new byte[] {1});
        assertEquals(List.of(file), list());
    }

    @Test
    void contentsThatFailHalfWayLeaveTheOldFile() throws IOException {
        Path file = Files.writeString(folder.resolve("a.json"), "old");
        assertThrows(
                IOException.class,
                () -> AtomicSave.save(file, out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("no more");
                }));
        assertEquals("old", Files.readString(file));
        assertEquals(List.of(file), list());
    }

    @Test
    void partsOfKilledRunsGoOnceTheyAreOldAndThoseOfOthersThatRunStay() throws IOException {
        Path old = Files.writeString(folder.resolve(".cablewright-1.part"), "x");
        Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
        Path fresh = Files.writeString(folder.resolve(".cablewright-2.part"), "x");

        AtomicSave.save(folder.resolve("a.json"), new byte[] {1});

        assertFalse(Files.exists(old));
        assertTrue(Files.exists(fresh));
    }

    private List<Path> list() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

    private List<Path> list() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
        }
    }
}

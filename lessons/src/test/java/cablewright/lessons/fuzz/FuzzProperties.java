// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;

/** Whatever stands in a file, its reader takes it or refuses it in words. The long run is {@link FuzzRun}. */
class FuzzProperties {

    private Path folder;

    @BeforeTry
    void makeFolder() throws IOException {
        folder = Files.createTempDirectory("fuzz");
    }

    @AfterTry
    void removeFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    @Property(tries = 40)
    void soundFilesAreTaken(@ForAll Reader reader) throws IOException {
        reader.read(reader.sound(), folder);
    }

    @Property(tries = 3000, shrinking = ShrinkingMode.OFF)
    void readersRefuseInWordsOrTake(@ForAll Reader reader, @ForAll long seed) throws IOException {
        reader.read(new TokenMutator(seed).changed(reader.sound()), folder);
    }

    @Property(tries = 1000)
    void anyBytesAreRefusedInWordsOrTaken(@ForAll Reader reader, @ForAll byte[] bytes) throws IOException {
        reader.read(bytes, folder);
    }
}

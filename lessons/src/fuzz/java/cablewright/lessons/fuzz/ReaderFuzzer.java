// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Hands one reader, named by the property {@code cablewright.reader}, what the fuzzer thinks of. */
public final class ReaderFuzzer {

    private static final Reader READER = Reader.valueOf(System.getProperty("cablewright.reader", "CABLE"));
    private static final Path FOLDER = folder();

    private ReaderFuzzer() {}

    private static Path folder() {
        try {
            return Files.createTempDirectory("fuzz");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads an input.
     *
     * @param bytes the input
     * @throws IOException if the folder for inputs can't be written
     */
    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        READER.read(bytes, FOLDER);
    }
}

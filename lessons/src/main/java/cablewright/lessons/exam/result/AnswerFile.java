// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.exam.sitting.SittingPlace;
import cablewright.simulator.file.PlainFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A file from the folder of answers.
 *
 * @param name its name
 * @param content what it holds; absent where it could not be read
 */
public record AnswerFile(String name, Optional<byte[]> content) {

    private static final int MOST_BYTES = 16 * 1024 * 1024;

    /**
     * Takes a file that was read.
     *
     * @param name its name
     * @param bytes what it holds
     */
    public AnswerFile(String name, byte[] bytes) {
        this(name, Optional.of(bytes.clone()));
    }

    /**
     * Reads a file. One that can't be read is no failure of the class: it is set aside later.
     *
     * @param file the file
     * @return the file
     */
    public static AnswerFile read(Path file) {
        String name = file.getFileName().toString();
        try (InputStream in = PlainFile.open(file, Long.MAX_VALUE)) {
            return new AnswerFile(name, Optional.of(in.readNBytes(MOST_BYTES)));
        } catch (IOException e) {
            return new AnswerFile(name, Optional.empty());
        }
    }

    /**
     * Lists the files of a folder; hidden ones and sittings that are still running are left out.
     *
     * @param folder the folder
     * @return its files, by name
     * @throws IOException if the folder can't be read
     */
    public static List<Path> within(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .filter(file -> !file.getFileName().toString().endsWith(SittingPlace.KEPT))
                    .sorted()
                    .toList();
        }
    }
}

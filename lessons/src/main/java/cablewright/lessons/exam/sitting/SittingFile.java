// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.FileKind;
import cablewright.lessons.format.LessonFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Where a sitting is kept while it runs: one file, replaced whole at each change, so that a kill at any moment leaves the last
 * state or the one before. A lock beside it, which the system takes back when the program ends in whatever way, keeps a
 * second program out.
 */
final class SittingFile implements AutoCloseable {

    private static final int MOST_BYTES = 16 * 1024 * 1024;

    private final Path file;
    private final FileChannel lock;

    private SittingFile(Path file, FileChannel lock) {
        this.file = file;
        this.lock = lock;
    }

    static SittingFile open(Path file) throws IOException {
        Path beside = file.resolveSibling("." + file.getFileName() + ".lock");
        FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            if (channel.tryLock() != null) {
                return new SittingFile(file, channel);
            }
        } catch (OverlappingFileLockException e) {
            // Held by this very program: said below like any other holder.
        }
        channel.close();
        throw new IOException(file + " is open in another window; go on there, or close that first");
    }

    Path file() {
        return file;
    }

    Optional<ExamAnswers> read() throws IOException, LessonFormatException {
        return Files.exists(file) ? read(file) : Optional.empty();
    }

    static Optional<ExamAnswers> read(Path file) throws IOException, LessonFormatException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            throw new IOException(file + " has more than " + MOST_BYTES + " bytes, so it is not a sitting of ours");
        }
        return Optional.of(
                ((Document.OfAnswers) new DocumentReader().parse(file.toString(), bytes, FileKind.ANSWERS)).answers());
    }

    void save(ExamAnswers answers) throws IOException {
        AtomicSave.save(file, new DocumentWriter().bytes(new Document.OfAnswers(answers)));
    }

    @Override
    public void close() throws IOException {
        lock.close();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.format.LessonFormatException;
import cablewright.simulator.file.PlainFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Where work that was not saved yet is kept, so that a crash loses none of it. Each open document has a file of its own
 * there, locked while its program runs; a file that nobody holds was left by a crash.
 *
 * <p>Files: {@code NAME.json}, the document as a lesson; {@code NAME.from}, the path of the file it came from; {@code
 * NAME.lock}, held while the program runs.
 */
public final class RecoveryFolder {

    private static final String DOCUMENT = ".json";
    private static final String ORIGIN = ".from";
    private static final String LOCK = ".lock";

    private static final Duration AGE_OF_LITTER = Duration.ofHours(1);
    private static final int MOST_NOTE = 1 << 16;

    private final Path folder;

    /**
     * Uses a folder; it is made when first written to.
     *
     * @param folder the folder
     */
    public RecoveryFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Work that a crash left behind.
     *
     * @param document the document as it was
     * @param origin the file that it came from; empty where it had none
     * @param name its name in the folder
     */
    public record Found(BenchDocument document, Optional<Path> origin, String name) {}

    /** The recovery file of one open document. Used by one thread. */
    public final class Keeper implements AutoCloseable {
        private final String name;
        private final FileChannel channel;
        private final FileLock lock;

        private Keeper(String name, FileChannel channel, FileLock lock) {
            this.name = name;
            this.channel = channel;
            this.lock = lock;
        }

        /**
         * Keeps a document, whole or not at all.
         *
         * @param document the document
         * @param origin the file that it came from
         * @throws IOException if it can't be kept
         */
        public void keep(BenchDocument document, Optional<Path> origin) throws IOException {
            byte[] from = origin.map(path -> path.toAbsolutePath().toString())
                    .orElse("")
                    .getBytes(StandardCharsets.UTF_8);
            AtomicSave.save(file(name, ORIGIN), from);
            AtomicSave.save(file(name, DOCUMENT), BenchFile.bytes(document, BenchFile.Form.LESSON));
        }

        /**
         * Forgets what was kept: it is saved, or not wanted.
         *
         * @throws IOException if it can't be removed
         */
        public void forget() throws IOException {
            Files.deleteIfExists(file(name, DOCUMENT));
            Files.deleteIfExists(file(name, ORIGIN));
        }

        /** Forgets what was kept and gives the file up. */
        @Override
        public void close() throws IOException {
            forget();
            lock.release();
            channel.close();
            Files.deleteIfExists(file(name, LOCK));
        }
    }

    private Path file(String name, String ending) {
        return folder.resolve(name + ending);
    }

    /**
     * Opens a recovery file for a document.
     *
     * @return its keeper
     * @throws IOException if the folder can't be written
     */
    public Keeper keeper() throws IOException {
        Files.createDirectories(folder);
        removeLitter();
        String name = UUID.randomUUID().toString();
        FileChannel channel =
                FileChannel.open(file(name, LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        return new Keeper(name, channel, channel.lock());
    }

    /**
     * Finds what crashes left behind. A file that can't be read is left where it is.
     *
     * @param language the language of what the Bench itself writes
     * @return what was found, oldest first
     */
    public List<Found> leftBehind(Locale language) {
        List<Found> found = new ArrayList<>();
        for (Path file : documents()) {
            String name = file.getFileName().toString().replace(DOCUMENT, "");
            if (!isHeld(name)) {
                read(file, name, language).ifPresent(found::add);
            }
        }
        return found;
    }

    private List<Path> documents() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(DOCUMENT))
                    .sorted((a, b) ->
                            Long.compare(a.toFile().lastModified(), b.toFile().lastModified()))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** Removes notes and locks whose document is gone and which nobody holds: programs that were killed leave them. */
    private void removeLitter() throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.list(folder)) {
            all = files.toList();
        }
        for (Path file : all) {
            String fileName = String.valueOf(file.getFileName());
            for (String ending : List.of(ORIGIN, LOCK)) {
                String name =
                        fileName.endsWith(ending) ? fileName.substring(0, fileName.length() - ending.length()) : "";
                if (!name.isEmpty() && isOld(file) && Files.notExists(file(name, DOCUMENT)) && !isHeld(name)) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    /** Not one that another program has just made and is about to lock. */
    private static boolean isOld(Path file) throws IOException {
        return Files.getLastModifiedTime(file)
                .toInstant()
                .isBefore(Instant.now().minus(AGE_OF_LITTER));
    }

    private boolean isHeld(String name) {
        Path file = file(name, LOCK);
        if (!Files.exists(file)) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException e) {
            return true;
        } catch (IOException e) {
            return true;
        }
    }

    private Optional<Found> read(Path file, String name, Locale language) {
        try {
            return Optional.of(new Found(BenchFile.open(file, language).document(), origin(name), name));
        } catch (LessonFormatException e) {
            return Optional.empty();
        }
    }

    /** The file that a document came from; a note that can't be read costs no more than that. */
    private Optional<Path> origin(String name) {
        try {
            String from = new String(PlainFile.bytes(file(name, ORIGIN), MOST_NOTE), StandardCharsets.UTF_8);
            return from.isEmpty() ? Optional.empty() : Optional.of(Path.of(from));
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    /**
     * Throws away what a crash left behind, once it is taken over or not wanted.
     *
     * @param found what was found
     */
    public void discard(Found found) {
        try {
            for (String ending : List.of(DOCUMENT, ORIGIN, LOCK)) {
                Files.deleteIfExists(file(found.name(), ending));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "the recovery file " + file(found.name(), DOCUMENT) + " can't be removed; remove it by hand", e);
        }
    }
}

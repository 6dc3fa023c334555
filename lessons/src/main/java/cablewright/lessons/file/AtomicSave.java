// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Saves whole files or nothing: writes a part beside the file, forces it to disk, moves it into the file's place and forces
 * the folder, so that after a loss of power the file is the old one or the new one.
 *
 * <p>A file that is replaced keeps its permissions, and a symbolic link stays one: what it points to is saved. Parts that a
 * killed program left in the folder are removed once they are an hour old.
 */
public final class AtomicSave {

    private static final String PART = ".cablewright-";
    private static final String ENDING = ".part";
    private static final Duration AGE_OF_LITTER = Duration.ofHours(1);
    private static final int MOST_LINKS = 40;

    private AtomicSave() {}

    /** What a file is to hold. */
    @FunctionalInterface
    public interface Contents {

        /**
         * Writes it.
         *
         * @param out where to; it need not be closed
         * @throws IOException if it can't be written
         */
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Saves a file. Should it fail, what was there before is untouched and nothing half-written is left.
     *
     * @param file where
     * @param bytes what
     * @throws IOException if it can't be written
     */
    public static void save(Path file, byte[] bytes) throws IOException {
        save(file, out -> out.write(bytes));
    }

    /**
     * Saves a file that need not fit into memory. Should it fail, what was there before is untouched.
     *
     * @param file where; a device or a pipe is written to as it is
     * @param contents what
     * @throws IOException if it can't be written, or the contents can't be made
     */
    public static void save(Path file, Contents contents) throws IOException {
        Path target = withoutLinks(file.toAbsolutePath());
        if (Files.exists(target) && !Files.isRegularFile(target) && !Files.isDirectory(target)) {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(target, StandardOpenOption.WRITE))) {
                contents.writeTo(out);
            }
            return;
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new AccessDeniedException(file.toString());
        }
        removeLitter(target.getParent());
        Path part = target.resolveSibling(PART + UUID.randomUUID() + ENDING);
        try {
            write(part, permissionsOf(target), contents);
            move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
        forceFolder(target.getParent());
    }

    /** Follows symbolic links, also one that points to a file that is not there yet. */
    private static Path withoutLinks(Path file) throws IOException {
        Path target = file;
        for (int i = 0; i < MOST_LINKS && Files.isSymbolicLink(target); i++) {
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    private static Optional<Set<PosixFilePermission>> permissionsOf(Path file) throws IOException {
        PosixFileAttributeView view =
                Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        return view == null || !Files.exists(file)
                ? Optional.empty()
                : Optional.of(view.readAttributes().permissions());
    }

    private static void write(Path part, Optional<Set<PosixFilePermission>> permissions, Contents contents)
            throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            if (permissions.isPresent()) {
                Files.setPosixFilePermissions(part, permissions.get());
            }
            OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
            contents.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Makes the new name last. Systems that can't open a folder for this keep names safe in another way. */
    static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // The file itself is on disk; only its name might be lost with the power.
            return;
        }
    }

    private static void removeLitter(Path folder) {
        Instant old = Instant.now().minus(AGE_OF_LITTER);
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, PART + "*" + ENDING)) {
            for (Path part : parts) {
                if (Files.getLastModifiedTime(part, LinkOption.NOFOLLOW_LINKS)
                        .toInstant()
                        .isBefore(old)) {
                    Files.deleteIfExists(part);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // Litter that can't be removed does no harm: the save itself says whether the folder can be written.
            return;
        }
    }
}

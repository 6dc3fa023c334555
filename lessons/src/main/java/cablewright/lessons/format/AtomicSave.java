// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Saves whole files or nothing: writes beside the file, then moves that into its place. */
public final class AtomicSave {

    private AtomicSave() {}

    /**
     * Saves a file. Should it fail, what was there before is untouched and nothing half-written is left.
     *
     * @param file where
     * @param bytes what
     * @throws IOException if it can't be written
     */
    public static void save(Path file, byte[] bytes) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path beside = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            try (FileChannel channel =
                    FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            move(beside, file);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Opens files for reading. Folders, devices and pipes are refused: some of them never end, and opening a pipe can wait forever. */
public final class PlainFile {

    private PlainFile() {}

    /**
     * Opens a file.
     *
     * @param file the file; a symbolic link is followed
     * @param mostBytes largest size that is allowed [bytes]
     * @return its bytes; not buffered
     * @throws FileSystemException if there is no such file, it is not a plain one, or it is too large; its reason says so
     * @throws IOException if it can't be read
     */
    public static InputStream open(Path file, long mostBytes) throws IOException {
        if (Files.isDirectory(file)) {
            throw refused(file, "it is a folder; name a file in it");
        }
        if (!Files.exists(file)) {
            throw new NoSuchFileException(
                    file.toString(), null, "there is no such file; check the name and the folder");
        }
        if (!Files.isRegularFile(file)) {
            throw refused(file, "it is a device or a pipe; save its contents as a file first");
        }
        long size = Files.size(file);
        if (size > mostBytes) {
            throw refused(file, "it has " + size + " bytes; at most " + mostBytes + " are allowed");
        }
        return Files.newInputStream(file);
    }

    /**
     * Reads a file whole.
     *
     * @param file the file
     * @param mostBytes largest size that is allowed [bytes]
     * @return its bytes
     * @throws IOException as {@link #open}, also if the file grows beyond the limit while it is read
     */
    public static byte[] bytes(Path file, int mostBytes) throws IOException {
        try (InputStream in = open(file, mostBytes)) {
            byte[] bytes = in.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes) {
                throw refused(file, "it has more than " + mostBytes + " bytes; at most " + mostBytes + " are allowed");
            }
            return bytes;
        }
    }

    private static FileSystemException refused(Path file, String reason) {
        return new FileSystemException(file.toString(), null, reason);
    }
}

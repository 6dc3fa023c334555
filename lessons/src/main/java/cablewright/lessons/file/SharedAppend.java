// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.file;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Appends lines to a file that several programs, and several threads of each, may append to at once. A line is on disk when the
 * call returns; should it fail, the file is as it was.
 *
 * <p>The lock covers one byte far beyond the end, so that where locks are binding it keeps nobody from reading.
 */
public final class SharedAppend {

    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;
    private static final int MOST_PAUSE_MILLIS = 4;

    private SharedAppend() {}

    /**
     * Appends a line. A last line without an end, torn by a crash, is closed first.
     *
     * @param file the file; it is made if it is not there, with its folder
     * @param line the line with its end
     * @throws IOException if it can't be written; the file is then as it was
     */
    public static void line(Path file, byte[] line) throws IOException {
        Path whole = file.toAbsolutePath();
        Files.createDirectories(whole.getParent());
        boolean isNew = !Files.exists(whole);
        try (FileChannel channel = FileChannel.open(
                        whole, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.READ);
                FileLock lock = locked(channel)) {
            assert lock.isValid();
            append(channel, line);
        }
        if (isNew) {
            AtomicSave.forceFolder(whole.getParent());
        }
    }

    /** Waits for other programs, and for other threads of this one, which Java refuses instead of queueing. */
    private static FileLock locked(FileChannel channel) throws IOException {
        while (true) {
            try {
                return channel.lock(LOCKED_BYTE, 1, false);
            } catch (OverlappingFileLockException e) {
                pause();
            }
        }
    }

    private static void pause() throws InterruptedIOException {
        try {
            Thread.sleep(ThreadLocalRandom.current().nextInt(1, MOST_PAUSE_MILLIS + 1));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("interrupted while another part of the program wrote to the file");
        }
    }

    private static void append(FileChannel channel, byte[] line) throws IOException {
        long before = channel.size();
        ByteBuffer bytes = ByteBuffer.allocate(line.length + 1);
        if (endsTorn(channel, before)) {
            bytes.put((byte) '\n');
        }
        bytes.put(line).flip();
        try {
            channel.position(before);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        } catch (IOException e) {
            channel.truncate(before);
            throw e;
        }
    }

    private static boolean endsTorn(FileChannel channel, long size) throws IOException {
        if (size == 0) {
            return false;
        }
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, size - 1);
        return last.get(0) != '\n';
    }
}

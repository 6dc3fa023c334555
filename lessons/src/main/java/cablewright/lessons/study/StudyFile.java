// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.BitSet;

/**
 * The results file of a shard, to which rows are only ever added. A run that was killed leaves at most one torn last line;
 * opening the file again cuts it off and finds which rows are there.
 */
final class StudyFile implements AutoCloseable {

    private final FileChannel channel;
    private final BitSet rows = new BitSet();

    private StudyFile(FileChannel channel) {
        this.channel = channel;
    }

    /** Opens a file to go on with, or begins one. */
    static StudyFile open(Path file, String head, int mostRows) throws IOException {
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        StudyFile opened = new StudyFile(channel);
        try {
            opened.lock(file);
            opened.goOn(file, head, mostRows);
        } catch (IOException | IllegalArgumentException e) {
            opened.close();
            throw e;
        }
        return opened;
    }

    private void lock(Path file) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            if (lock == null) {
                throw new IllegalArgumentException(file + " is being written by another run; wait for it");
            }
        } catch (OverlappingFileLockException e) {
            throw new IllegalArgumentException(file + " is being written by another run; wait for it", e);
        }
    }

    private void goOn(Path file, String head, int mostRows) throws IOException {
        String text = read();
        if (text.length() < head.length() && head.startsWith(text)) {
            channel.truncate(0);
            append(head);
            return;
        }
        if (!text.startsWith(head)) {
            throw new IllegalArgumentException(
                    file + " holds another study, or another shard of it; choose another file for the results");
        }
        int whole = text.lastIndexOf('\n') + 1;
        channel.truncate(StudyHeader.bytes(text.substring(0, whole)).length);
        channel.position(channel.size());
        text.substring(head.length(), whole).lines().forEach(line -> rows.set(rowOf(file, line, mostRows)));
    }

    private String read() throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
            continue;
        }
        return new String(buffer.array(), 0, buffer.position(), StandardCharsets.UTF_8);
    }

    static int rowOf(Path file, String line, int mostRows) {
        int comma = line.indexOf(',');
        String number = comma < 0 ? line : line.substring(0, comma);
        if (!number.matches("[0-9]{1,9}") || Integer.parseInt(number) >= mostRows) {
            throw new IllegalArgumentException(
                    file + " has a line that begins with \"" + number + "\", which is no row of this study");
        }
        return Integer.parseInt(number);
    }

    boolean has(int row) {
        return rows.get(row);
    }

    int count() {
        return rows.cardinality();
    }

    /** Adds a row in one write. */
    void add(int row, String line) throws IOException {
        append(line + "\n");
        rows.set(row);
    }

    private void append(String text) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(StudyHeader.bytes(text));
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}

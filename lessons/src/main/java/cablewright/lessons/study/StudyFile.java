// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.check.VisibleText;
import cablewright.simulator.file.BoundedLines;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.BitSet;

/**
 * The results file of a shard, to which rows are only ever added. A run that was killed leaves at most one torn last line;
 * opening the file again cuts it off and finds which rows are there.
 */
final class StudyFile implements AutoCloseable {

    /** Longest line of a results file [bytes]. */
    static final int MOST_LINE = 100_000;

    private static final int MOST_SHOWN = 40;

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
        byte[] wanted = StudyHeader.bytes(head);
        ByteBuffer found = ByteBuffer.allocate((int) Math.min(wanted.length, channel.size()));
        while (found.hasRemaining() && channel.read(found, found.position()) >= 0) {
            continue;
        }
        if (!Arrays.equals(found.array(), Arrays.copyOf(wanted, found.capacity()))) {
            throw new IllegalArgumentException(
                    file + " holds another study, or another shard of it; choose another file for the results");
        }
        if (found.capacity() < wanted.length) {
            channel.truncate(0);
            append(head);
            return;
        }
        channel.position(wanted.length);
        long whole = wanted.length;
        BoundedLines lines = new BoundedLines(Channels.newInputStream(channel), StandardCharsets.UTF_8, MOST_LINE);
        while (lines.advance()) {
            if (lines.isEnded()) {
                rows.set(rowOf(file, textOf(file, lines), mostRows));
                whole = wanted.length + lines.bytesTaken();
            }
        }
        channel.truncate(whole);
        channel.position(whole);
    }

    static String textOf(Path file, BoundedLines lines) {
        try {
            return lines.text();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(file + ", line " + lines.number() + ": " + e.getMessage(), e);
        }
    }

    static int rowOf(Path file, String line, int mostRows) {
        int comma = line.indexOf(',');
        String number = comma < 0 ? line : line.substring(0, comma);
        if (!number.matches("[0-9]{1,9}") || Integer.parseInt(number) >= mostRows) {
            throw new IllegalArgumentException(
                    file + " has a line that begins with \"" + shown(number) + "\", which is no row of this study");
        }
        return Integer.parseInt(number);
    }

    private static String shown(String number) {
        return VisibleText.line(number.length() > MOST_SHOWN ? number.substring(0, MOST_SHOWN) + "…" : number);
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

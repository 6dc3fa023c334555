// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.util.Arrays;

/**
 * Reads text line by line with memory for one line. A line ends with LF, CR LF or CR. One that is too long, or not text in
 * the expected encoding, is still counted and passed over, so that the caller can name it and go on.
 */
public final class BoundedLines {

    private static final int BLOCK = 1 << 16;

    /** A line that goes on for longer is cut here, so that an endless one ends: its rest counts as the next line [bytes]. */
    private static final long LONGEST_SKIPPED = (1L << 26) + 1;

    private final InputStream in;
    private final Charset charset;
    private final int mostBytes;
    private final byte[] block = new byte[BLOCK];
    private int next;
    private int filled;
    private long taken;
    private byte[] line = new byte[256];
    private int length;
    private boolean isTooLong;
    private boolean isEnded;
    private long number;

    /**
     * Reads a stream.
     *
     * @param in the stream; it is read from where it is, and not closed
     * @param charset its encoding, one in which every line end is a byte of its own
     * @param mostBytes longest line that is kept [bytes]
     */
    public BoundedLines(InputStream in, Charset charset, int mostBytes) {
        this.in = in;
        this.charset = charset;
        this.mostBytes = mostBytes;
    }

    /**
     * Goes on to the next line.
     *
     * @return whether there is one
     * @throws IOException if the stream can't be read
     */
    public boolean advance() throws IOException {
        length = 0;
        isTooLong = false;
        isEnded = false;
        if (!fill()) {
            return false;
        }
        number++;
        long start = taken;
        do {
            int end = endInBlock();
            keep(end - next);
            taken += end - next;
            next = end;
            if (end < filled) {
                passEnd();
                isEnded = true;
                return true;
            }
        } while (taken - start < LONGEST_SKIPPED && fill());
        return true;
    }

    /** Makes sure that the block holds something that was not read yet; false at the end of the stream. */
    private boolean fill() throws IOException {
        if (next == filled) {
            filled = Math.max(0, in.read(block, 0, BLOCK));
            next = 0;
        }
        return next < filled;
    }

    private int endInBlock() {
        int end = next;
        while (end < filled && block[end] != '\n' && block[end] != '\r') {
            end++;
        }
        return end;
    }

    private void passEnd() throws IOException {
        boolean mayBePair = block[next++] == '\r';
        taken++;
        if (mayBePair && fill() && block[next] == '\n') {
            next++;
            taken++;
        }
    }

    private void keep(int count) {
        int room = Math.min(count, mostBytes - length);
        isTooLong |= room < count;
        if (length + room > line.length) {
            line = Arrays.copyOf(line, Math.min(mostBytes, Math.max(2 * line.length, length + room)));
        }
        System.arraycopy(block, next, line, length, room);
        length += room;
    }

    /**
     * Returns the line's text.
     *
     * @return the line without its end
     * @throws IllegalArgumentException if it is too long, or not text in the expected encoding
     */
    public String text() {
        if (isTooLong) {
            throw new IllegalArgumentException("it is longer than " + mostBytes + " bytes");
        }
        try {
            return charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(line, 0, length))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException("it is not text in " + charset, e);
        }
    }

    /**
     * Returns whether the line holds nothing.
     *
     * @return whether it has at most blanks and tabs
     */
    public boolean isBlank() {
        for (int i = 0; i < length; i++) {
            if (line[i] != ' ' && line[i] != '\t') {
                return false;
            }
        }
        return true;
    }

    /** Whether the line has an end; the last line of a file that was cut off has none. */
    public boolean isEnded() {
        return isEnded;
    }

    /** Number of the line, from 1. */
    public long number() {
        return number;
    }

    /** How many bytes have been read up to the end of this line. */
    public long bytesTaken() {
        return taken;
    }
}

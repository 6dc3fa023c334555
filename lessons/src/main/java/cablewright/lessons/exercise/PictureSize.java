// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;

/**
 * How large a picture will be once it is decoded, read from the head of its file. PNG: the chunk IHDR comes first (W3C, Portable
 * Network Graphics, third edition, section 11.2.1). JPEG: a frame header, SOF0 to SOF15 but for DHT, JPG and DAC (ITU-T T.81,
 * annex B.2.2).
 *
 * @param width pixels across
 * @param height pixels down
 */
record PictureSize(long width, long height) {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte[] HEADER = {'I', 'H', 'D', 'R'};
    private static final int PNG_HEAD = 24;
    private static final int MARKER = 0xff;
    private static final int START_OF_IMAGE = 0xd8;
    private static final int START_OF_SCAN = 0xda;
    private static final int FRAME_BYTES = 9;

    /** Empty where the file is neither a PNG nor a JPEG file, or is broken before its size. */
    static Optional<PictureSize> of(byte[] file) {
        if (begins(file, PNG)) {
            return ofPng(file);
        }
        boolean isJpeg = file.length > 2 && at(file, 0) == MARKER && at(file, 1) == START_OF_IMAGE;
        return isJpeg ? ofJpeg(file) : Optional.empty();
    }

    private static boolean begins(byte[] file, byte[] signature) {
        return file.length >= signature.length
                && Arrays.equals(file, 0, signature.length, signature, 0, signature.length);
    }

    private static Optional<PictureSize> ofPng(byte[] file) {
        if (file.length < PNG_HEAD || !Arrays.equals(file, 12, 16, HEADER, 0, 4)) {
            return Optional.empty();
        }
        ByteBuffer head = ByteBuffer.wrap(file);
        return sized(Integer.toUnsignedLong(head.getInt(16)), Integer.toUnsignedLong(head.getInt(20)));
    }

    private static Optional<PictureSize> ofJpeg(byte[] file) {
        int place = 2;
        while (place + FRAME_BYTES <= file.length && at(file, place) == MARKER) {
            int marker = at(file, place + 1);
            if (marker == MARKER) {
                place++;
            } else if (isFrame(marker)) {
                return sized(pair(file, place + 7), pair(file, place + 5));
            } else if (marker == START_OF_SCAN) {
                return Optional.empty();
            } else {
                place += 2 + pair(file, place + 2);
            }
        }
        return Optional.empty();
    }

    private static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    private static Optional<PictureSize> sized(long width, long height) {
        return width > 0 && height > 0 ? Optional.of(new PictureSize(width, height)) : Optional.empty();
    }

    private static int at(byte[] file, int place) {
        return file[place] & 0xff;
    }

    private static int pair(byte[] file, int place) {
        return at(file, place) << 8 | at(file, place + 1);
    }
}

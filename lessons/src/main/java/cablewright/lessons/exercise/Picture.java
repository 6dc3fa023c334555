// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A picture that a lesson carries in itself, so that it can't be lost on the way.
 *
 * @param caption what it shows, one line; read to those who can't see it
 * @param data a PNG or JPEG file of at most 1000000 bytes and 8000000 pixels, in lines of Base64 (RFC 4648)
 */
public record Picture(@Text String caption, @Lines(most = Picture.MOST_CHARACTERS) String data) {

    /** Most bytes of a picture's file. */
    public static final int MOST_BYTES = 1_000_000;

    /** Most pixels of a picture: more would stop the window while they are decoded. */
    public static final int MOST_PIXELS = 8_000_000;

    /** Most characters of its file in Base64, which holds 3 bytes in 4 characters, and of the line feeds between. */
    static final int MOST_CHARACTERS = MOST_BYTES / 3 * 4 + 100_000;

    private static final int MOST_SIDE = 10_000;
    private static final int LINE = 1000;
    private static final String ALLOWED =
            "; allowed is a PNG or JPEG file of at most " + MOST_BYTES + " bytes in Base64";

    /** Checks the ranges. */
    public Picture {
        Require.components(Picture.class, caption, data);
        byte[] bytes = decoded(data);
        if (bytes.length > MOST_BYTES) {
            throw new IllegalArgumentException("data has " + bytes.length + " bytes" + ALLOWED);
        }
        PictureSize size = PictureSize.of(bytes)
                .orElseThrow(() -> new IllegalArgumentException("data is another kind of file, or broken" + ALLOWED));
        if (size.width() > MOST_SIDE || size.height() > MOST_SIDE || size.width() * size.height() > MOST_PIXELS) {
            throw new IllegalArgumentException("data is " + size.width() + " by " + size.height()
                    + " pixels; a picture has at most " + MOST_SIDE + " on a side and " + MOST_PIXELS + " in all");
        }
    }

    /**
     * Makes a picture of a file.
     *
     * @param caption what it shows
     * @param file the file's bytes
     * @return the picture
     */
    public static Picture of(String caption, byte[] file) {
        byte[] end = {'\n'};
        return new Picture(
                caption, new String(Base64.getMimeEncoder(LINE, end).encode(file), StandardCharsets.US_ASCII));
    }

    private static byte[] decoded(String data) {
        try {
            return Base64.getDecoder().decode(data.replace("\n", ""));
        } catch (IllegalArgumentException notBase64) {
            throw new IllegalArgumentException("data is not Base64" + ALLOWED, notBase64);
        }
    }

    /**
     * Returns the picture's file.
     *
     * @return its bytes
     */
    public byte[] bytes() {
        return decoded(data);
    }
}

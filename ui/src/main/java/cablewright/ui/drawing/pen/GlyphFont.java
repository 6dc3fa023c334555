// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The letters of all pictures: a font that comes with a library, so that pictures look the same on every machine, also on
 * one that has no fonts at all.
 */
public final class GlyphFont {

    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TrueTypeFont font;
    private final CmapLookup lookup;
    private final double unitsPerEm;

    /** Reads the font. */
    public GlyphFont() {
        try (InputStream in = open()) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            lookup = font.getUnicodeCmapLookup();
            unitsPerEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("the font of the pictures can't be read", e);
        }
    }

    /** Opens the font's own file. */
    static InputStream open() {
        InputStream in = PDDocument.class.getResourceAsStream(RESOURCE);
        if (in == null) {
            throw new IllegalStateException("the font of the pictures is not where PDFBox keeps it: " + RESOURCE);
        }
        return in;
    }

    /**
     * Returns how wide a text is.
     *
     * @param text the text, of one line
     * @param size size of its letters
     * @return width, in the units of the size
     */
    public double width(String text, double size) {
        return text.codePoints().mapToDouble(c -> advance(glyph(c))).sum() * size / unitsPerEm;
    }

    /**
     * Breaks a text into lines; a word longer than a line is cut.
     *
     * @param text the text
     * @param size size of its letters
     * @param most the most that a line is wide, in the units of the size
     * @return one line or more
     */
    public List<String> wrapped(String text, double size, double most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("[ \\t]+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= most) {
                line = longer;
            } else {
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = word;
                while (width(line, size) > most && line.length() > 1) {
                    int fits = fitting(line, size, most);
                    lines.add(line.substring(0, fits));
                    line = line.substring(fits);
                }
            }
        }
        lines.add(line);
        return lines;
    }

    private int fitting(String word, double size, double most) {
        int fits = 1;
        while (fits < word.length() && width(word.substring(0, fits + 1), size) <= most) {
            fits++;
        }
        return fits;
    }

    /** Returns the outline of a text whose baseline starts at a place, y down. */
    GeneralPath outline(String text, double x, double y, double size) {
        double scale = size / unitsPerEm;
        GeneralPath all = new GeneralPath();
        double pen = x;
        for (int c : text.codePoints().toArray()) {
            int glyph = glyph(c);
            GeneralPath path = path(glyph);
            if (path != null) {
                all.append(path.getPathIterator(new AffineTransform(scale, 0, 0, -scale, pen, y)), false);
            }
            pen += advance(glyph) * scale;
        }
        return all;
    }

    private int glyph(int codePoint) {
        return lookup.getGlyphId(codePoint);
    }

    private double advance(int glyph) {
        try {
            return font.getAdvanceWidth(glyph);
        } catch (IOException e) {
            throw new UncheckedIOException("the font of the pictures can't be read", e);
        }
    }

    private GeneralPath path(int glyph) {
        try {
            var data = font.getGlyph().getGlyph(glyph);
            return data == null ? null : data.getPath();
        } catch (IOException e) {
            throw new UncheckedIOException("the font of the pictures can't be read", e);
        }
    }
}

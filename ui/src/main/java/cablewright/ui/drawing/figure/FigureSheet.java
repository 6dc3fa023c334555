// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.GlyphFont;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.PictureFormat;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A figure to print or to take away: with its title and its caption on a sheet, and its numbers in a file beside. */
public final class FigureSheet {

    private static final double WIDTH = 760;
    private static final double PANELS_HEIGHT = 440;
    private static final double MARGIN = 14;
    private static final double FONT = 10;
    private static final double TITLE_FONT = 14;
    private static final double LINE = 14;
    private static final double SMALL_FONT = 0.9 * FONT;

    private final Figure figure;
    private final List<String> caption;
    private final List<String> settings;

    /**
     * Lays out a sheet.
     *
     * @param figure the figure
     */
    public FigureSheet(Figure figure) {
        this.figure = figure;
        GlyphFont font = new GlyphFont();
        this.caption = font.wrapped(figure.caption(), FONT, WIDTH - 2 * MARGIN);
        this.settings = font.wrapped(figure.settings(), SMALL_FONT, WIDTH - 2 * MARGIN);
    }

    /**
     * Draws the sheet.
     *
     * @param format kind of picture
     * @return the picture file
     */
    public byte[] bytes(PictureFormat format) {
        double height = 2 * MARGIN + 2 * LINE + PANELS_HEIGHT + (caption.size() + settings.size() + 1.5) * LINE;
        return format.draw(WIDTH, height, figure.title(), pen -> draw(pen, height));
    }

    /**
     * Writes the picture, and beside it the numbers under the same name with the ending .csv.
     *
     * @param file where to; its ending, .png, .svg or .pdf, says which kind of picture
     * @return the file of numbers
     * @throws IOException if one can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public Path save(Path file) throws IOException {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        PictureFormat format = formatOf(name.substring(dot + 1));
        Path data = file.resolveSibling(name.substring(0, dot) + ".csv");
        Files.write(file, bytes(format));
        Files.write(data, FigureData.csv(figure).getBytes(StandardCharsets.UTF_8));
        return data;
    }

    private static PictureFormat formatOf(String ending) {
        for (PictureFormat format : PictureFormat.values()) {
            if (format.name().equalsIgnoreCase(ending)) {
                return format;
            }
        }
        throw new IllegalArgumentException("a figure can't be written as \"" + ending.toLowerCase(Locale.ROOT)
                + "\"; let the file's name end in .png, .svg or .pdf");
    }

    private void draw(Pen pen, double height) {
        Palette palette = Palette.LIGHT;
        pen.fill(0, 0, WIDTH, height, palette.of(Ink.PAPER));
        pen.text(figure.title(), MARGIN, MARGIN + LINE, Pen.Anchor.START, TITLE_FONT, palette.of(Ink.TEXT));
        Box panels = new Box(MARGIN, MARGIN + 2 * LINE, WIDTH - 2 * MARGIN, PANELS_HEIGHT);
        new FigureDrawing(pen, palette, FONT).draw(figure, panels);
        double y = MARGIN + 2 * LINE + PANELS_HEIGHT + 1.5 * LINE;
        for (String line : caption) {
            pen.text(line, MARGIN, y, Pen.Anchor.START, FONT, palette.of(Ink.TEXT));
            y += LINE;
        }
        for (String line : settings) {
            pen.text(line, MARGIN, y, Pen.Anchor.START, SMALL_FONT, palette.of(Ink.FAINT));
            y += LINE;
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;

/** The kinds of picture file. */
public enum PictureFormat {
    /** Pixels, twice as many each way as there are points. */
    PNG,
    /** Vectors for pages on a screen. */
    SVG,
    /** Vectors for paper. */
    PDF;

    /**
     * Draws anything. The same drawing gives the same bytes on every machine.
     *
     * @param width width of the sheet, in points
     * @param height height of the sheet, in points
     * @param title what the picture shows, for readers who can't see it
     * @param drawing draws with the pen it is given
     * @return the picture file
     */
    public byte[] draw(double width, double height, String title, Consumer<Pen> drawing) {
        try {
            switch (this) {
                case PNG:
                    PngPen png = new PngPen(width, height);
                    drawing.accept(png);
                    return png.bytes();
                case SVG:
                    SvgPen svg = new SvgPen(width, height, title);
                    drawing.accept(svg);
                    return svg.bytes();
                default:
                    PdfPen pdf = new PdfPen(width, height, title);
                    drawing.accept(pdf);
                    return pdf.bytes();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a picture can't be drawn in memory", e);
        }
    }
}

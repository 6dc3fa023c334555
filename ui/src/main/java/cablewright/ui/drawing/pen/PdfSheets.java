// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;

/** Several drawings as the pages of one PDF. The same drawings give the same bytes on every machine. */
public final class PdfSheets {

    private PdfSheets() {}

    /**
     * Draws the pages.
     *
     * @param width width of each page, in points
     * @param height height of each page, in points
     * @param title what the pages are, for readers who can't see them
     * @param pages draws each page with the pen it is given; at least one
     * @return the PDF file
     */
    public static byte[] draw(double width, double height, String title, List<Consumer<Pen>> pages) {
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("pages has 0 entries; a PDF needs at least 1");
        }
        PdfPen pen = new PdfPen(width, height, title);
        for (int i = 0; i < pages.size(); i++) {
            if (i > 0) {
                pen.nextPage();
            }
            pages.get(i).accept(pen);
        }
        try {
            return pen.bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF can't be made in memory", e);
        }
    }
}

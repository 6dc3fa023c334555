// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.ui.drawing.pen.PdfSheets;
import cablewright.ui.drawing.pen.Pen;
import java.util.List;
import java.util.function.Consumer;

/**
 * Pages ready for paper.
 *
 * @param title what they are
 * @param paper the size of the paper
 * @param pages draws each page
 */
public record Printout(String title, PaperSize paper, List<Consumer<Pen>> pages) {

    /** Copies the list. */
    public Printout {
        pages = List.copyOf(pages);
    }

    /**
     * Writes the pages as PDF. The same pages give the same bytes.
     *
     * @return the file
     */
    public byte[] pdf() {
        return PdfSheets.draw(paper.width(), paper.height(), title, pages);
    }

    /**
     * Sets other pages behind these.
     *
     * @param other pages for the same paper
     * @return both in one
     */
    public Printout then(Printout other) {
        if (other.paper() != paper) {
            throw new IllegalArgumentException(
                    "paper is " + other.paper() + "; it must be " + paper + " like that of the pages before");
        }
        List<Consumer<Pen>> all = new java.util.ArrayList<>(pages);
        all.addAll(other.pages());
        return new Printout(title, paper, all);
    }
}

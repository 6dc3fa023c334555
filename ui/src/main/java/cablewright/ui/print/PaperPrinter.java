// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** Sends pages to a printer of this machine. It waits for people and for paper; call it beside the screen. */
public final class PaperPrinter {

    private PaperPrinter() {}

    /**
     * Returns whether there is a printer.
     *
     * @return false where the system knows none
     */
    public static boolean isAvailable() {
        return PrinterJob.lookupPrintServices().length > 0;
    }

    /**
     * Asks which printer to use, and prints.
     *
     * @param printout the pages
     * @return whether they were sent; false where the person thought better of it
     * @throws IOException if the printer refuses, with the reason
     */
    public static boolean print(Printout printout) throws IOException {
        try (PDDocument document = Loader.loadPDF(printout.pdf())) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setJobName(printout.title());
            job.setPageable(new PDFPageable(document));
            if (!job.printDialog()) {
                return false;
            }
            job.print();
            return true;
        } catch (PrinterException e) {
            throw new IOException(
                    "the printer did not take it (" + e.getMessage() + "); look at the printer, or save a PDF instead",
                    e);
        }
    }
}

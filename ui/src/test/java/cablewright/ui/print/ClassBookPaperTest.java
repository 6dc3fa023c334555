// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.classbook.ClassSummary.KindProgress;
import cablewright.lessons.classbook.ClassSummary.PlaceError;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The class book on paper is read back. */
class ClassBookPaperTest {

    private static ClassSummary summary() {
        return new ClassSummary(
                4,
                0.77,
                2,
                1,
                3,
                Map.of(
                        EventKind.PINCH, new KindProgress(3, 0.6, 0.8),
                        EventKind.SPLICE, new KindProgress(2, 1, 1)),
                Map.of(
                        EventKind.PINCH, Map.of(EventKind.PINCH, 1, EventKind.SPLICE, 2),
                        EventKind.SPLICE, Map.of(EventKind.SPLICE, 2)),
                Map.of(EventKind.PINCH, 1),
                List.of(new PlaceError(EventKind.PINCH, -0.4), new PlaceError(EventKind.PINCH, 0.2)));
    }

    private static String text(ClassSummary summary, PaperSize paper, LengthUnit unit) throws IOException {
        Printout printout = new ClassBookPaper(summary, "Ada", paper, Words.in(unit, Locale.ROOT)).pages();
        try (PDDocument document = Loader.loadPDF(printout.pdf())) {
            assertEquals(printout.pages().size(), document.getNumberOfPages());
            assertEquals(paper.width(), document.getPage(0).getMediaBox().getWidth(), 0.01);
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void figuresProgressGridAndErrorsAreOnIt(PaperSize paper) throws IOException {
        String text = text(summary(), paper, LengthUnit.METRES);
        for (String wanted : new String[] {
            "Class book: Ada",
            "4 attempts · 77 % of the marks · 2 needless digs · 3 faults missed · 1 left in the ground",
            "60 %, last five 80 %, 3 asked",
            "splice [2] · ·",
            "pinch 2 [1] 1",
            "0.30 m",
            "0.40 m",
            "page 1 of 1"
        }) {
            assertTrue(text.contains(wanted), wanted + " is not in " + text);
        }
    }

    @Test
    void feetAreReadWhereFeetAreShown() throws IOException {
        assertTrue(text(summary(), PaperSize.A4, LengthUnit.FEET).contains("1.31 ft"));
    }

    @Test
    void manyKindsGoOnInAnotherTable() throws IOException {
        Map<EventKind, KindProgress> progress = new EnumMap<>(EventKind.class);
        Map<EventKind, Map<EventKind, Integer>> taken = new EnumMap<>(EventKind.class);
        for (EventKind kind : EventKind.values()) {
            progress.put(kind, new KindProgress(1, 0.5, 0.5));
            taken.put(kind, Map.of(kind, 1));
        }
        String text = text(
                new ClassSummary(9, 0.5, 0, 0, 0, progress, taken, Map.of(), List.of()),
                PaperSize.LETTER,
                LengthUnit.METRES);
        assertEquals(EventKind.values().length, text.split("\\[1]", -1).length - 1);
        assertTrue(text.contains("page 2 of "), text);
    }

    @Test
    void emptyBookSaysSo() throws IOException {
        assertTrue(text(ClassSummary.of(List.of()), PaperSize.A4, LengthUnit.METRES)
                .contains("No attempts yet."));
    }
}

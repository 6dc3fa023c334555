// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.exercise.Exercise;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Paper is read back: what must be on it is, what must not is not, and it has the size of the paper. */
class SheetMakerTest {

    private static Exercise exercise() {
        BenchDocument document = BenchTemplate.STREET_OF_TAPS
                .document(Locale.ROOT)
                .withCable(cable -> Insertable.PINCH.putOn(cable, 121, 1))
                .withCable(cable -> Insertable.WATER.putOn(cable, 160, 1));
        return ExerciseEdits.withExplanation(
                document.exercise(), "The **pinch** dips.\n\n- one\n- two\n\nIts name is Zweifel at 121 m.");
    }

    private static SheetMaker maker(PaperSize paper, LengthUnit unit) {
        return new SheetMaker(exercise(), paper, Words.in(unit, Locale.ROOT));
    }

    private static String text(Printout printout) throws IOException {
        try (PDDocument document = Loader.loadPDF(printout.pdf())) {
            assertEquals(printout.pages().size(), document.getNumberOfPages());
            assertEquals(
                    printout.paper().width(), document.getPage(0).getMediaBox().getWidth(), 0.01);
            assertEquals(
                    printout.paper().height(), document.getPage(0).getMediaBox().getHeight(), 0.01);
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void aWorksheetHasBriefTraceAndRecordAndGivesNothingAway(PaperSize paper) throws IOException {
        String text = text(maker(paper, LengthUnit.METRES).worksheet());
        for (String wanted : new String[] {
            "Net Loft Street",
            "weak pictures",
            "Plant power may be on this cable",
            "local codes",
            "tap 3",
            "end: terminated",
            "velocity 0.87",
            "what it is",
            "belongs, or damage",
            "page 1 of"
        }) {
            assertTrue(text.contains(wanted), wanted + " in " + text);
        }
        for (String secret : new String[] {"pinch", "water", "Zweifel", "121"}) {
            assertFalse(text.contains(secret), secret);
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void anAnswerSheetHasEveryEventWithItsVerdictAndTheExplanation(PaperSize paper) throws IOException {
        String text = text(maker(paper, LengthUnit.METRES).answerSheet());
        for (String wanted : new String[] {
            "not for trainees", "pinch", "121.0 m", "damage", "belongs", "28.0 m", "Zweifel", "• one", "Required"
        }) {
            assertTrue(text.contains(wanted), wanted + " in " + text);
        }
        assertFalse(text.contains("**"), "Markdown is set, not shown");
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void lengthsAreInTheUnitThatIsReadAndTheSamePaperHasTheSameBytes(LengthUnit unit) throws IOException {
        Printout sheet = maker(PaperSize.A4, unit).worksheet();
        assertTrue(text(sheet).contains("200 " + unit.symbol()), text(sheet));
        assertArrayEquals(sheet.pdf(), maker(PaperSize.A4, unit).worksheet().pdf());
    }
}

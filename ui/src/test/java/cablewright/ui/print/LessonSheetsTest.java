// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.course.InstructorNotes;
import cablewright.lessons.course.Misreading;
import cablewright.lessons.course.Reference;
import cablewright.lessons.exercise.Lesson;
import cablewright.ui.demonstrations.Demonstration;
import cablewright.ui.demonstrations.Demonstrations;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The paper of a whole lesson. */
class LessonSheetsTest {

    private static final Lesson LESSON = BuiltInLessons.find("sign-and-size").orElseThrow();
    private static final InstructorNotes NOTES =
            LESSON.plan().orElseThrow().instructor().orElseThrow();

    private static String text(LessonSheets.Kind kind, LengthUnit unit) throws IOException {
        LessonSheets sheets = new LessonSheets(LESSON, PaperSize.A4, Words.in(unit, Locale.ROOT));
        try (PDDocument document = Loader.loadPDF(sheets.make(kind).pdf())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = LessonSheets.Kind.class,
            names = {"TEXT", "WORKSHEETS", "CARD"})
    void whatTraineesGetHoldsNothingOfTheInstructors(LessonSheets.Kind kind) throws IOException {
        String text = text(kind, LengthUnit.METRES);
        for (Misreading misreading : NOTES.misreadings()) {
            assertFalse(text.contains(misreading.claim()), misreading::claim);
        }
        assertTrue(text.contains("Follow local codes"), "the cautions stand on every kind");
        assertFalse(text.contains("{") || text.contains(" | "), "no mark of a number is left");
    }

    @Test
    void theGuideHoldsTimingMisreadingsDemonstrationsAndAnswers() throws IOException {
        String text = text(LessonSheets.Kind.GUIDE, LengthUnit.METRES);
        assertTrue(text.contains("55 minutes") && text.contains("not for trainees"), text);
        NOTES.misreadings().forEach(it -> assertTrue(text.contains(it.claim()), it::claim));
        assertTrue(text.contains("The right answer: 225 Ω"), text);
    }

    @Test
    void lengthsAreInTheUnitOfThePaper() throws IOException {
        assertTrue(text(LessonSheets.Kind.TEXT, LengthUnit.METRES).contains("stands at 60 m"));
        assertTrue(text(LessonSheets.Kind.TEXT, LengthUnit.FEET).contains("stands at 197 ft"));
    }

    @Test
    void thereIsAWorksheetForEveryExercise() throws IOException {
        String text = text(LessonSheets.Kind.WORKSHEETS, LengthUnit.METRES);
        LESSON.exercises().forEach(exercise -> assertTrue(text.contains(exercise.title()), exercise::title));
    }

    @Test
    void everyDemonstrationThatALessonNamesIsThere() {
        List<String> known =
                Demonstrations.all().stream().map(Demonstration::id).toList();
        for (Lesson lesson : BuiltInLessons.all()) {
            InstructorNotes notes = lesson.plan().orElseThrow().instructor().orElseThrow();
            List<String> named =
                    notes.demonstrations().stream().map(Reference::id).toList();
            assertEquals(
                    List.of(), named.stream().filter(id -> !known.contains(id)).toList(), lesson.id());
        }
    }

    @Test
    void aLessonWithoutAPlanHasNoCard() {
        Lesson plain = new Lesson("l", "L", "Text", "Invented.", 0.5, LESSON.exercises());
        LessonSheets sheets = new LessonSheets(plain, PaperSize.LETTER, Words.in(LengthUnit.METRES, Locale.ROOT));
        assertFalse(sheets.has(LessonSheets.Kind.CARD) || sheets.has(LessonSheets.Kind.GUIDE));
        assertTrue(sheets.has(LessonSheets.Kind.WORKSHEETS));
    }
}

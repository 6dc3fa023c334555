// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.ExerciseFingerprint;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.shell.Examples;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassBookViewModelTest {

    private static final Lesson LESSON = Examples.lesson();

    @TempDir
    private Path folder;

    private ClassBookViewModel book;
    private Path answers;

    @BeforeEach
    void writeAnswers() throws IOException {
        book = new ClassBookViewModel(
                new ClassRecords(folder.resolve("store")),
                Threads.sameThread(),
                new Texts("cablewright.ui.desktop.shell.desktop", Locale.ROOT));
        answers = Files.createDirectory(folder.resolve("answers"));
        Exercise exercise = LESSON.exercises().get(0);
        write("ada.json", KeyedAnswer.of(exercise));
        write(
                "ben.json",
                new Attempt(exercise.id(), "Ben", List.of(), exercise.start().settings()));
    }

    private void write(String name, Attempt attempt) throws IOException {
        Document sheet = new Document.OfAttempts(new AttemptSheet(LESSON.id(), List.of(attempt)));
        Files.write(answers.resolve(name), new DocumentWriter().bytes(sheet));
    }

    @Test
    void folderOfAnswersIsMarkedWithProgressAndGoesIntoTheBook() {
        List<Double> progress = new ArrayList<>();
        book.progressProperty().addListener((o, before, now) -> progress.add(now.doubleValue()));
        book.mark(LESSON, answers);
        assertEquals(List.of(0.0, 0.5, 1.0, ClassBookViewModel.IDLE), progress);
        assertEquals(2, book.records().size());
        assertEquals(List.of("Ben", "Perfect reader"), book.trainees());
        assertEquals(0.5, book.summaryProperty().get().meanFraction(), 1e-9);
        assertEquals("2 attempts were marked.", book.messageProperty().get());
    }

    @Test
    void markingAFolderAgainAddsNothing() {
        book.mark(LESSON, answers);
        book.mark(LESSON, answers);
        assertEquals(2, book.records().size());
        assertEquals("0 attempts were marked.", book.messageProperty().get());
    }

    @Test
    void cancelledMarkingKeepsNothing() {
        book.progressProperty().addListener((o, before, now) -> {
            if (now.doubleValue() == 0.5) {
                book.cancel();
            }
        });
        book.mark(LESSON, answers);
        assertEquals(List.of(), book.records());
        assertEquals(ClassBookViewModel.IDLE, book.progressProperty().get());
    }

    @Test
    void unsoundAnswerIsToldAndTheOthersAreMarked() throws IOException {
        Files.writeString(answers.resolve("carl.json"), "{}");
        book.mark(LESSON, answers);
        assertEquals(2, book.records().size());
        assertTrue(
                book.messageProperty().get().contains("carl.json"),
                book.messageProperty().get());
    }

    @Test
    void answersToAnotherExerciseOfTheSameNameAreSaidAndNotMarked() throws IOException {
        Exercise exercise = LESSON.exercises().get(0);
        Attempt right = KeyedAnswer.of(exercise);
        write("dee.json", right.boundTo("0".repeat(64)));
        write("eve.json", right.boundTo(ExerciseFingerprint.of(exercise)));
        book.mark(LESSON, answers);
        assertEquals(3, book.records().size());
        String said = book.messageProperty().get();
        assertTrue(said.contains("dee.json: it answers another exercise") && !said.contains("eve.json"), said);
    }

    @Test
    void recordsCarryTheTitleOfTheExercise() {
        book.mark(LESSON, answers);
        assertEquals(
                Optional.of(LESSON.exercises().get(0).title()),
                book.records().get(0).exerciseTitle());
    }

    @Test
    void exportsHoldWhatIsShown() throws IOException {
        book.mark(LESSON, answers);
        book.traineeProperty().set(Optional.of("Ben"));
        book.exportCsv(folder.resolve("out.csv"));
        book.exportXapi(folder.resolve("out.json"));
        String csv = Files.readString(folder.resolve("out.csv"));
        assertTrue(csv.contains("Ben,") && !csv.contains("Perfect"), csv);
        String statements = Files.readString(folder.resolve("out.json"));
        assertTrue(statements.contains("\"name\" : \"Ben\"") && !statements.contains("Perfect"), statements);
    }

    @Test
    void bookIsSavedAsPdfForPaper() throws IOException {
        book.mark(LESSON, answers);
        book.savePdf(folder.resolve("book.pdf"), PaperSize.LETTER, Words.in(LengthUnit.METRES, Locale.ROOT));
        assertEquals(
                "The class book was saved as book.pdf.", book.messageProperty().get());
        byte[] pdf = Files.readAllBytes(folder.resolve("book.pdf"));
        assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
        book.savePdf(
                folder.resolve("no such folder").resolve("book.pdf"),
                PaperSize.A4,
                Words.in(LengthUnit.METRES, Locale.ROOT));
        assertTrue(book.messageProperty().get().startsWith("That did not work"));
    }

    @Test
    void namesThatLookAlikeOnDiskAreTwoTrainees() throws IOException {
        Exercise exercise = LESSON.exercises().get(0);
        write(
                "c.json",
                new Attempt(exercise.id(), "Ö. B", List.of(), exercise.start().settings()));
        write(
                "d.json",
                new Attempt(exercise.id(), "Ä. B", List.of(), exercise.start().settings()));
        book.mark(LESSON, answers);
        assertEquals(4, book.trainees().size());
        try (var logs = Files.list(folder.resolve("store"))) {
            assertEquals(4, logs.count());
        }
    }
}

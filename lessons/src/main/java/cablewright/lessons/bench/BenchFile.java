// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.bench.edit.BenchTexts;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.ExerciseFingerprint;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.format.codec.FormatProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * A file as the Bench opened it.
 *
 * @param document what it holds; a cable alone is set into an exercise, an exercise alone into a lesson
 * @param form what kind of file it was, and is saved as while that holds all there is
 * @param isNewer whether a newer program wrote it: some of it may be missing here, so it is only looked at
 */
public record BenchFile(BenchDocument document, Form form, boolean isNewer) {

    private static final int NAME_DIGITS = 8;

    /** What a file of the Bench holds. */
    public enum Form {
        /** A lesson. */
        LESSON,
        /** One exercise. */
        EXERCISE,
        /** A cable; what was built around it goes into another file. */
        CABLE
    }

    /**
     * Opens a file.
     *
     * @param file the file
     * @param language the language of what the Bench itself writes
     * @return what it holds
     * @throws LessonFormatException if it can't be used
     */
    public static BenchFile open(Path file, Locale language) throws LessonFormatException {
        DocumentReader.Opened opened = new DocumentReader().open(file);
        Document document = opened.document();
        if (document instanceof Document.OfLesson ofLesson) {
            Lesson lesson = ofLesson.lesson();
            return new BenchFile(new BenchDocument(lesson, 0, language), Form.LESSON, opened.isNewer());
        }
        if (document instanceof Document.OfExercise ofExercise) {
            Exercise exercise = ofExercise.exercise();
            return new BenchFile(BenchDocument.of(exercise, language), Form.EXERCISE, opened.isNewer());
        }
        if (document instanceof Document.OfCable cable) {
            // The same cable gets the same name each time it is opened, and another cable another one.
            String name = "line-" + ExerciseFingerprint.of(cable.cable()).substring(0, NAME_DIGITS);
            Exercise exercise = BenchTemplate.around(name, cable.cable(), language);
            return new BenchFile(BenchDocument.of(exercise, language), Form.CABLE, opened.isNewer());
        }
        BenchTexts texts = new BenchTexts(language);
        FormatProblem problem =
                new FormatProblem("", texts.say("file.attempts.value"), texts.say("file.attempts.allowed"));
        throw new LessonFormatException(file.toString(), List.of(problem));
    }

    /**
     * Returns the form in which a document is saved: an exercise stays one while it is alone, all else becomes a lesson.
     *
     * @param document the document
     * @param form what it was opened as
     * @return lesson or exercise
     */
    public static Form savedAs(BenchDocument document, Form form) {
        boolean alone = document.lesson().exercises().size() == 1;
        return form == Form.EXERCISE && alone ? Form.EXERCISE : Form.LESSON;
    }

    /**
     * Saves a document, whole or not at all.
     *
     * @param file where
     * @param document the document
     * @param form lesson, exercise, or the cable alone
     * @throws IOException if it can't be written; what was there before is untouched
     */
    public static void save(Path file, BenchDocument document, Form form) throws IOException {
        AtomicSave.save(file, bytes(document, form));
    }

    /**
     * Writes a document.
     *
     * @param document the document
     * @param form lesson, exercise, or the cable alone
     * @return the bytes of its file
     */
    public static byte[] bytes(BenchDocument document, Form form) {
        switch (form) {
            case EXERCISE:
                return new DocumentWriter().bytes(new Document.OfExercise(document.exercise()));
            case CABLE:
                return new DocumentWriter().bytes(new Document.OfCable(document.cable()));
            default:
                return new DocumentWriter().bytes(new Document.OfLesson(document.lesson()));
        }
    }
}

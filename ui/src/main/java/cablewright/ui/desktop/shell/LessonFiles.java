// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.format.codec.FormatProblem;
import cablewright.lessons.text.Texts;
import java.nio.file.Path;
import java.util.List;

/** Reads what Practice can open: a lesson, or one exercise, which then is a lesson of one. */
final class LessonFiles {

    private static final double USUAL_PASS_MARK = 0.7;

    private LessonFiles() {}

    static Lesson read(Path file, Texts texts) throws LessonFormatException {
        Document document = new DocumentReader().read(file);
        if (document instanceof Document.OfLesson lesson) {
            return lesson.lesson();
        }
        if (document instanceof Document.OfExercise exercise) {
            return lessonOf(exercise.exercise());
        }
        FormatProblem problem = new FormatProblem(
                "", texts.say("window.otherFormat", document.kind().format()), texts.say("window.otherFormat.allowed"));
        throw new LessonFormatException(file.toString(), List.of(problem));
    }

    private static Lesson lessonOf(Exercise exercise) {
        return new Lesson(
                exercise.id(),
                exercise.title(),
                exercise.brief(),
                exercise.title(),
                USUAL_PASS_MARK,
                List.of(exercise));
    }
}

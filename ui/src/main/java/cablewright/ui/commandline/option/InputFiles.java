// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.LessonFormatException;
import cablewright.simulator.cable.Cable;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.InputProblem;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** Reads the files that commands name; whatever is wrong with one becomes sentences that begin with the file's name. */
public final class InputFiles {

    /** The word that stands for the lesson that comes with the program. */
    public static final String BUILT_IN = "built-in";

    private static final double ALL_MARKS = 1;

    private InputFiles() {}

    /** Reads a file of any kind. */
    public static Document document(Path file) {
        try {
            return new DocumentReader().read(file);
        } catch (LessonFormatException e) {
            throw new InputProblem(sentences(e));
        }
    }

    /** Every problem of a file, each with the file's name. */
    public static List<String> sentences(LessonFormatException e) {
        return e.problems().stream()
                .map(problem -> e.file() + ": " + problem.sentence())
                .toList();
    }

    /** Reads a cable, which may be that of an exercise. */
    public static Cable cable(Path file) {
        Document document = document(file);
        if (document instanceof Document.OfCable cable) {
            return cable.cable();
        }
        if (document instanceof Document.OfExercise exercise) {
            return exercise.exercise().cable();
        }
        throw InputProblem.of("file.wantsCable", file, document.kind().format());
    }

    /** Reads a lesson; an exercise is a lesson of one. */
    public static Lesson lesson(Environment surroundings, String name) {
        if (name.equals(BUILT_IN)) {
            return BuiltInLessons.first();
        }
        if (name.startsWith(BUILT_IN + ":")) {
            return builtIn(name.substring(BUILT_IN.length() + 1));
        }
        Path file = surroundings.folder().resolve(name);
        Document document = document(file);
        if (document instanceof Document.OfLesson lesson) {
            return lesson.lesson();
        }
        if (document instanceof Document.OfExercise exercise) {
            return lessonOf(exercise.exercise(), surroundings);
        }
        throw InputProblem.of("file.wantsLesson", file, document.kind().format());
    }

    private static Lesson builtIn(String id) {
        return BuiltInLessons.find(id)
                .orElseThrow(() -> InputProblem.of(
                        "file.noBuiltIn",
                        id,
                        String.join(
                                ", ",
                                BuiltInLessons.all().stream().map(Lesson::id).toList())));
    }

    private static Lesson lessonOf(Exercise exercise, Environment surroundings) {
        return new Lesson(
                exercise.id(),
                exercise.title(),
                surroundings.say("lesson.oneExercise"),
                surroundings.say("lesson.invented"),
                ALL_MARKS,
                List.of(exercise));
    }

    /** Reads attempts. */
    public static AttemptSheet attempts(Path file) {
        try {
            return new DocumentReader().readAttempts(file);
        } catch (LessonFormatException e) {
            throw new InputProblem(sentences(e));
        }
    }

    /** Does work on what a file holds; what the simulator refuses is a problem of that file. */
    public static <T> T refusalsOf(Path file, Supplier<T> work) {
        try {
            return work.get();
        } catch (IllegalArgumentException e) {
            throw new InputProblem(file + ": " + e.getMessage());
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.work;

import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.file.FileFault;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.LessonFormatException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The lessons in a folder: every file that ends in {@code .json} and holds a lesson, by the names of the files.
 *
 * @param lessons the lessons with their files
 * @param faults one sentence for each file that can't be used
 */
public record OwnLessons(List<Found> lessons, List<String> faults) {

    private static final int MOST_LESSONS = 200;

    /** Copies the lists. */
    public OwnLessons {
        lessons = List.copyOf(lessons);
        faults = List.copyOf(faults);
    }

    /**
     * A lesson of the folder.
     *
     * @param lesson the lesson
     * @param file its file
     */
    public record Found(Lesson lesson, Path file) {}

    /**
     * Reads a folder.
     *
     * @param folder the folder; it need not exist
     * @return its lessons, at most 200
     */
    public static OwnLessons in(Path folder) {
        List<Found> found = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (Path file : files(folder, faults)) {
            try {
                found.add(new Found(new DocumentReader().readLesson(file), file));
            } catch (LessonFormatException e) {
                faults.add(file.getFileName() + ": " + e.problems().get(0).sentence());
            }
        }
        return new OwnLessons(found, faults);
    }

    private static List<Path> files(Path folder, List<String> faults) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> file.toString().endsWith(".json"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .limit(MOST_LESSONS)
                    .toList();
        } catch (IOException e) {
            faults.add(FileFault.reading(folder, e));
            return List.of();
        }
    }
}

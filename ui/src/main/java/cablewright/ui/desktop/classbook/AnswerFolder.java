// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.ExerciseFingerprint;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.ReadableId;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.text.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;

/** Marks a folder of answers to a lesson, or to exercises that were made, file by file. */
final class AnswerFolder {

    private final Lesson lesson;
    private final Path folder;
    private final Texts texts;
    private final Marker marker = new Marker();
    private final ExerciseGenerator generator = new ExerciseGenerator();

    AnswerFolder(Lesson lesson, Path folder, Texts texts) {
        this.texts = texts;
        this.lesson = lesson;
        this.folder = folder;
    }

    /**
     * Marks them.
     *
     * @param progress hears the share that is done, 0 to 1, after each file
     * @param cancelled asked before each attempt; once true the rest is left
     * @return the records, and a sentence for each file that can't be marked
     * @throws IOException if the folder can't be read
     */
    ClassRecords.Contents mark(DoubleConsumer progress, BooleanSupplier cancelled) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        List<AttemptRecord> records = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        if (files.isEmpty()) {
            faults.add(texts.say("classbook.noAnswers", folder.getFileName()));
        }
        for (int i = 0; i < files.size() && !cancelled.getAsBoolean(); i++) {
            markFile(files.get(i), records, faults, cancelled);
            progress.accept((i + 1.0) / files.size());
        }
        return new ClassRecords.Contents(records, faults);
    }

    /** An exercise of the lesson, or one that was made when its name still held the request. */
    private Optional<Exercise> exercise(String id) {
        return lesson.exercise(id).or(() -> ReadableId.request(id).map(generator::generate));
    }

    private void markFile(Path file, List<AttemptRecord> records, List<String> faults, BooleanSupplier cancelled) {
        try {
            Instant handedIn = Files.getLastModifiedTime(file).toInstant();
            for (Attempt attempt : new DocumentReader().readAttempts(file).attempts()) {
                if (cancelled.getAsBoolean()) {
                    return;
                }
                Optional<Exercise> exercise = exercise(attempt.exerciseId());
                if (exercise.isPresent() && !ExerciseFingerprint.fits(attempt, exercise.get())) {
                    faults.add(texts.say(
                            "classbook.otherExercise",
                            file.getFileName(),
                            exercise.get().title(),
                            lesson.title()));
                } else if (exercise.isPresent()) {
                    records.add(AttemptRecord.of(marker.mark(exercise.get(), attempt), lesson, handedIn));
                } else {
                    faults.add(texts.say(
                            "classbook.otherLesson", file.getFileName(), attempt.exerciseId(), lesson.title()));
                }
            }
        } catch (LessonFormatException e) {
            e.problems().forEach(problem -> faults.add(file.getFileName() + ": " + problem.sentence()));
        } catch (IOException | IllegalArgumentException e) {
            faults.add(file.getFileName() + ": " + e.getMessage());
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import java.util.List;
import java.util.Optional;

/**
 * The marks of one person for a whole lesson. An exercise without a sheet counts with nothing.
 *
 * @param lessonId the lesson
 * @param sheets the sheets that count, one for each exercise handed in
 * @param marks marks in all
 * @param maximum most that can be earned
 * @param passed whether the share of the marks reaches that of the lesson
 */
public record LessonMarks(String lessonId, List<MarkSheet> sheets, double marks, double maximum, boolean passed) {

    /** Copies the list. */
    public LessonMarks {
        sheets = List.copyOf(sheets);
    }

    /**
     * Adds up a lesson.
     *
     * @param lesson the lesson
     * @param sheets marked attempts; of several for one exercise the last counts
     * @param marker finds what the exercises without an attempt would have been worth
     * @return the marks
     */
    public static LessonMarks of(Lesson lesson, List<MarkSheet> sheets, Marker marker) {
        List<MarkSheet> counted = lesson.exercises().stream()
                .flatMap(exercise -> last(exercise, sheets).stream())
                .toList();
        double marks = counted.stream().mapToDouble(MarkSheet::marks).sum();
        double maximum = lesson.exercises().stream()
                .mapToDouble(exercise ->
                        last(exercise, sheets).map(MarkSheet::maximum).orElseGet(() -> marker.maximumMarks(exercise)))
                .sum();
        boolean passed = maximum == 0 || marks >= lesson.passMarkFraction() * maximum;
        return new LessonMarks(lesson.id(), counted, marks, maximum, passed);
    }

    private static Optional<MarkSheet> last(Exercise exercise, List<MarkSheet> sheets) {
        return sheets.stream()
                .filter(sheet -> sheet.exerciseId().equals(exercise.id()))
                .reduce((first, second) -> second);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.course.LessonPlan;
import cablewright.lessons.course.Reference;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How far a trainee is in a lesson. An exercise counts as solved when its best attempt earned the lesson's pass mark.
 *
 * @param lesson the lesson
 * @param best best share of the marks by exercise, 0 to 1; what was not tried is not in it
 * @param waitsFor titles of the lessons to pass first that are not passed yet
 */
public record LessonProgress(Lesson lesson, Map<String, Double> best, List<String> waitsFor) {

    /** Copies what it is given. */
    public LessonProgress {
        best = Map.copyOf(best);
        waitsFor = List.copyOf(waitsFor);
    }

    /**
     * Works out the progress in a course.
     *
     * @param lessons the lessons in the order in which they are offered
     * @param records records of one trainee
     * @return one for each lesson, in that order
     */
    public static List<LessonProgress> of(List<Lesson> lessons, List<AttemptRecord> records) {
        Map<String, LessonProgress> alone = new LinkedHashMap<>();
        lessons.forEach(lesson ->
                alone.putIfAbsent(lesson.id(), new LessonProgress(lesson, bestIn(lesson, records), List.of())));
        return lessons.stream()
                .map(lesson -> new LessonProgress(lesson, bestIn(lesson, records), waiting(lesson, alone)))
                .toList();
    }

    private static Map<String, Double> bestIn(Lesson lesson, List<AttemptRecord> records) {
        Set<String> names = lesson.exercises().stream().map(Exercise::id).collect(Collectors.toSet());
        Map<String, Double> best = new HashMap<>();
        for (AttemptRecord record : records) {
            if (record.lessonId().equals(lesson.id()) && names.contains(record.exerciseId())) {
                best.merge(record.exerciseId(), record.fraction(), Math::max);
            }
        }
        return best;
    }

    /** A lesson that is not known here can't be waited for. */
    private static List<String> waiting(Lesson lesson, Map<String, LessonProgress> known) {
        return lesson.plan().map(LessonPlan::prerequisites).orElse(List.of()).stream()
                .map(Reference::id)
                .map(known::get)
                .filter(before -> before != null && !before.isPassed())
                .map(before -> before.lesson().title())
                .toList();
    }

    /**
     * Returns whether an exercise is solved.
     *
     * @param exerciseId the exercise
     * @return whether its best attempt earned the pass mark
     */
    public boolean isSolved(String exerciseId) {
        return best.getOrDefault(exerciseId, -1.0) >= lesson.passMarkFraction();
    }

    /**
     * Returns how many exercises are solved.
     *
     * @return 0 to the number of exercises
     */
    public int solved() {
        return (int) lesson.exercises().stream()
                .filter(exercise -> isSolved(exercise.id()))
                .count();
    }

    /**
     * Returns the share of all marks of the lesson that was earned; an exercise that was not tried has earned none.
     *
     * @return 0 to 1
     */
    public double share() {
        return lesson.exercises().stream()
                .mapToDouble(exercise -> best.getOrDefault(exercise.id(), 0.0))
                .average()
                .orElse(0);
    }

    /**
     * Returns whether the lesson is passed.
     *
     * @return whether every exercise was tried and the share of all marks reaches the pass mark
     */
    public boolean isPassed() {
        return best.size() == lesson.exercises().size() && share() >= lesson.passMarkFraction();
    }

    /**
     * Returns whether anything was done.
     *
     * @return whether an exercise was tried
     */
    public boolean isBegun() {
        return !best.isEmpty();
    }

    /**
     * Finds where to go on.
     *
     * @return the first exercise that is not solved; empty where all are
     */
    public Optional<Exercise> next() {
        return lesson.exercises().stream()
                .filter(exercise -> !isSolved(exercise.id()))
                .findFirst();
    }
}

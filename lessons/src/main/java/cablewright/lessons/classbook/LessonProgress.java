// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How far one person has got in a lesson that was set. Of several attempts at an exercise the last counts.
 *
 * @param trainee who
 * @param done how many exercises were handed in
 * @param of how many the lesson has
 * @param marks marks of those that were handed in
 * @param maximum most that these could have earned
 * @param needlessDigs how many of their flags would open the ground for nothing
 * @param lastAt when the last one was handed in; absent where none was
 */
public record LessonProgress(
        String trainee, int done, int of, double marks, double maximum, int needlessDigs, Optional<Instant> lastAt) {

    /**
     * Looks through the attempts of a class.
     *
     * @param lesson the lesson
     * @param records attempts of anybody at anything
     * @param names who the lesson was set to; those who handed something in without being named follow them
     * @return one entry for each person
     */
    public static List<LessonProgress> of(Lesson lesson, List<AttemptRecord> records, List<String> names) {
        Set<String> exercises = lesson.exercises().stream().map(Exercise::id).collect(Collectors.toSet());
        Map<String, Map<String, AttemptRecord>> last = new LinkedHashMap<>();
        records.stream()
                .filter(record -> record.lessonId().equals(lesson.id()) && exercises.contains(record.exerciseId()))
                .sorted(Comparator.comparing(AttemptRecord::committedAt))
                .forEach(record -> last.computeIfAbsent(record.trainee(), key -> new LinkedHashMap<>())
                        .put(record.exerciseId(), record));
        Set<String> people = new LinkedHashSet<>(names);
        people.addAll(last.keySet().stream().sorted().toList());
        List<LessonProgress> progress = new ArrayList<>();
        for (String person : people) {
            progress.add(of(
                    person,
                    exercises.size(),
                    last.getOrDefault(person, Map.of()).values().stream().toList()));
        }
        return progress;
    }

    private static LessonProgress of(String person, int exercises, List<AttemptRecord> counted) {
        return new LessonProgress(
                person,
                counted.size(),
                exercises,
                counted.stream().mapToDouble(AttemptRecord::marks).sum(),
                counted.stream().mapToDouble(AttemptRecord::maximum).sum(),
                counted.stream().mapToInt(AttemptRecord::needlessDigs).sum(),
                counted.stream().map(AttemptRecord::committedAt).max(Comparator.naturalOrder()));
    }
}

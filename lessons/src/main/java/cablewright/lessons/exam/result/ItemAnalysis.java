// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.MarkSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.Variance;

/**
 * How one exercise did in a class, by the terms of classical test theory (Ebel &amp; Frisbie, Essentials of Educational
 * Measurement, 5th edition; from memory).
 *
 * @param exerciseId the exercise
 * @param title its title
 * @param answered how many people opened it
 * @param difficulty mean share of its marks, 0 to 1; the higher, the easier
 * @param discrimination correlation of its share with the marks of all other exercises together, −1 to 1: below 0.2 it tells
 *     good readers from poor ones hardly; absent with fewer than three people, a single exercise, or where all did alike
 */
public record ItemAnalysis(
        String exerciseId, String title, int answered, double difficulty, OptionalDouble discrimination) {

    private static final int LEAST_PEOPLE = 3;

    static List<ItemAnalysis> of(Lesson lesson, List<PersonResult> people) {
        List<ItemAnalysis> all = new ArrayList<>();
        for (int i = 0; i < lesson.exercises().size() && !people.isEmpty(); i++) {
            Exercise exercise = lesson.exercises().get(i);
            int item = i;
            double[] own = people.stream()
                    .mapToDouble(person -> person.sheets().get(item).fraction())
                    .toArray();
            double[] rest = people.stream()
                    .mapToDouble(person -> person.sheets().stream()
                                    .mapToDouble(MarkSheet::marks)
                                    .sum()
                            - person.sheets().get(item).marks())
                    .toArray();
            long opened = people.stream()
                    .filter(person ->
                            person.sheets().get(item).attempt().startedAt().isPresent())
                    .count();
            double mean = java.util.Arrays.stream(own).average().orElse(0);
            all.add(new ItemAnalysis(exercise.id(), exercise.title(), (int) opened, mean, correlation(own, rest)));
        }
        return all;
    }

    private static OptionalDouble correlation(double[] own, double[] rest) {
        Variance variance = new Variance();
        boolean varies = own.length >= LEAST_PEOPLE && variance.evaluate(own) > 0 && variance.evaluate(rest) > 0;
        return varies ? OptionalDouble.of(new PearsonsCorrelation().correlation(own, rest)) : OptionalDouble.empty();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.exercise.Lesson;
import java.util.List;

/**
 * A marked class.
 *
 * @param title title of the exam
 * @param lesson what was asked, with its cables
 * @param people marked people, by name
 * @param setAside files that were not marked, by name
 * @param items how each exercise did
 * @param resemblances pairs whose answers resemble each other more than chance explains
 * @param records every marked attempt, as a log keeps it
 */
public record ClassResult(
        String title,
        Lesson lesson,
        List<PersonResult> people,
        List<SetAside> setAside,
        List<ItemAnalysis> items,
        List<Resemblance> resemblances,
        List<AttemptRecord> records) {

    /** Copies the lists. */
    public ClassResult {
        people = List.copyOf(people);
        setAside = List.copyOf(setAside);
        items = List.copyOf(items);
        resemblances = List.copyOf(resemblances);
        records = List.copyOf(records);
    }

    /**
     * Puts the attempts together: success by kind, and what was taken for what.
     *
     * @return the summary
     */
    public ClassSummary summary() {
        return ClassSummary.of(records);
    }
}

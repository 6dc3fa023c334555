// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.course;

import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import java.util.List;
import java.util.Optional;

/**
 * Where a lesson stands in a course.
 *
 * @param aim what a trainee can do afterwards, in Markdown
 * @param prerequisites ids of the lessons to take first
 * @param card what to remember, for a card to print, in Markdown
 * @param instructor notes that trainees never see
 */
public record LessonPlan(
        @Lines String aim,
        @Entries(most = 20, distinct = true) List<Reference> prerequisites,
        @Lines String card,
        Optional<InstructorNotes> instructor) {

    /** Copies the list and checks the ranges. */
    public LessonPlan {
        Require.components(LessonPlan.class, aim, prerequisites, card, instructor);
        prerequisites = List.copyOf(prerequisites);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.marking.LessonMarks;
import cablewright.lessons.marking.MarkSheet;
import java.util.List;

/**
 * One person's marks.
 *
 * @param file name of the sealed file
 * @param receipt its receipt, which the person may have kept
 * @param answers what was handed in
 * @param sheets a marked sheet for each exercise, in the order of the lesson; what was not opened is marked as left blank
 * @param total all of them together
 */
public record PersonResult(
        String file, String receipt, ExamAnswers answers, List<MarkSheet> sheets, LessonMarks total) {

    /** Copies the list. */
    public PersonResult {
        sheets = List.copyOf(sheets);
    }

    /**
     * Returns who it is.
     *
     * @return the name under which the paper was sat
     */
    public String name() {
        return answers.trainee();
    }

    /**
     * Returns the share of the marks.
     *
     * @return 0 to 1
     */
    public double fraction() {
        return total.maximum() > 0 ? total.marks() / total.maximum() : 1;
    }
}

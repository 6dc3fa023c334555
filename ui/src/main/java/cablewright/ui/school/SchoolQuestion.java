// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import java.util.List;

/**
 * One question that a school's system can mark: a picture with some parts to answer.
 *
 * @param id name in files: letters, digits and hyphens
 * @param title one line
 * @param text what is known and asked, in Markdown
 * @param picture the trace as PNG
 * @param pictureWords what the picture shows, for those who can't see it
 * @param parts what is answered
 * @param feedback what there is to see, in Markdown; shown afterwards
 */
record SchoolQuestion(
        String id, String title, String text, byte[] picture, String pictureWords, List<Part> parts, String feedback) {

    /** Something to answer. */
    sealed interface Part permits Number, OneOf {

        /** Name within the question: capital letters and digits. */
        String name();

        /** What is asked, as plain text. */
        String prompt();

        /** Marks for the right answer. */
        double marks();
    }

    /**
     * A number with a tolerance: all marks within it, half of them within twice as much.
     *
     * @param name name within the question
     * @param prompt what is asked
     * @param marks marks
     * @param value the right number
     * @param tolerance how far from it an answer earns all marks
     * @param unit symbol of its unit
     */
    record Number(String name, String prompt, double marks, double value, double tolerance, String unit)
            implements Part {}

    /**
     * One of some answers.
     *
     * @param name name within the question
     * @param prompt what is asked
     * @param marks marks
     * @param answers the answers
     */
    record OneOf(String name, String prompt, double marks, List<Answer> answers) implements Part {}

    /**
     * One answer.
     *
     * @param text what it says
     * @param share share of the marks that it earns, 0 to 1
     * @param feedback why, as plain text; may be empty
     */
    record Answer(String text, double share, String feedback) {}
}

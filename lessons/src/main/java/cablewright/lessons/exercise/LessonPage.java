// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.course.WorkedStep;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.util.List;
import java.util.Optional;

/**
 * A page between exercises: text and pictures, and perhaps a question first. With a question the page is worked through in
 * three steps: predict, by an answer; observe, with text and pictures; explain, with the reason of the answer that was
 * chosen (White and Gunstone, Probing Understanding, 1992; from memory). What is answered on a page earns no marks.
 *
 * @param id name within its lesson, other than those of exercises
 * @param exercisesBefore how many exercises come before it: 0 for the start of the lesson, their number for its end
 * @param title one line
 * @param text the text, in Markdown
 * @param pictures pictures beneath the text, at most 10
 * @param prediction what is asked before text and pictures are shown
 * @param figures traces that the simulator draws, beneath the text, at most 4
 * @param steps a worked example, beneath the figures, at most 20
 */
public record LessonPage(
        @Id String id,
        @Between(least = 0, most = Lesson.MOST_EXERCISES) int exercisesBefore,
        @Text String title,
        @Lines String text,
        @Entries(most = LessonPage.MOST_PICTURES) List<Picture> pictures,
        Optional<Prediction> prediction,
        @Entries(most = 4) List<LiveFigure> figures,
        @Entries(most = 20) List<WorkedStep> steps) {

    /** Most pictures of a page. */
    public static final int MOST_PICTURES = 10;

    /** Copies the list and checks the ranges. */
    public LessonPage {
        Require.components(LessonPage.class, id, exercisesBefore, title, text, pictures, prediction, figures, steps);
        pictures = List.copyOf(pictures);
        figures = List.copyOf(figures);
        steps = List.copyOf(steps);
    }

    /**
     * Makes a page without live figures and without a worked example.
     *
     * @param id name within its lesson
     * @param exercisesBefore how many exercises come before it
     * @param title one line
     * @param text the text, in Markdown
     * @param pictures pictures beneath the text
     * @param prediction what is asked before text and pictures are shown
     */
    public LessonPage(
            String id,
            int exercisesBefore,
            String title,
            String text,
            List<Picture> pictures,
            Optional<Prediction> prediction) {
        this(id, exercisesBefore, title, text, pictures, prediction, List.of(), List.of());
    }
}

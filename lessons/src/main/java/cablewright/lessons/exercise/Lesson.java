// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.lessons.course.LessonPlan;
import cablewright.lessons.course.LiveFigure;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.util.List;
import java.util.Optional;

/**
 * A row of exercises, with pages between them.
 *
 * @param id name of the lesson
 * @param title one line
 * @param introduction what it is about, in Markdown
 * @param worldNote says that its people and places are invented
 * @param passMarkFraction share of the marks from which the lesson is passed, 0 to 1
 * @param exercises 1 to 200 exercises, in order
 * @param pages pages before, between and behind the exercises, in order, at most 200
 * @param plan where it stands in a course
 */
public record Lesson(
        @Id String id,
        @Text String title,
        @Lines String introduction,
        @Text String worldNote,
        @Between(least = 0, most = 1) double passMarkFraction,
        @Entries(least = 1, most = Lesson.MOST_EXERCISES) List<Exercise> exercises,
        @Entries(most = 200) List<LessonPage> pages,
        Optional<LessonPlan> plan) {

    /** Most exercises of a lesson. */
    public static final int MOST_EXERCISES = 200;

    /** Copies the lists and checks the ranges. */
    public Lesson {
        Require.components(Lesson.class, id, title, introduction, worldNote, passMarkFraction, exercises, pages, plan);
        exercises = List.copyOf(exercises);
        Require.distinct("exercises", exercises, Exercise::id);
        pages = List.copyOf(pages);
        Require.distinct("pages", pages, LessonPage::id);
        Require.distinct("figures", figures(pages), LiveFigure::id);
        int before = 0;
        for (LessonPage page : pages) {
            requireFree(page, exercises);
            Require.between("exercisesBefore", page.exercisesBefore(), 0, exercises.size());
            if (page.exercisesBefore() < before) {
                throw new IllegalArgumentException(
                        "pages has \"" + page.id() + "\" out of order; list them by rising exercisesBefore");
            }
            before = page.exercisesBefore();
        }
    }

    private static List<LiveFigure> figures(List<LessonPage> pages) {
        return pages.stream().flatMap(page -> page.figures().stream()).toList();
    }

    /**
     * Returns the live figures of all pages.
     *
     * @return the figures, in order
     */
    public List<LiveFigure> figures() {
        return figures(pages);
    }

    private static void requireFree(LessonPage page, List<Exercise> exercises) {
        if (exercises.stream().anyMatch(exercise -> exercise.id().equals(page.id()))) {
            throw new IllegalArgumentException(
                    "pages has \"" + page.id() + "\", which is an exercise's name; give the page one of its own");
        }
    }

    /**
     * Makes a lesson without pages.
     *
     * @param id name of the lesson
     * @param title one line
     * @param introduction what it is about, in Markdown
     * @param worldNote says that its people and places are invented
     * @param passMarkFraction share of the marks from which the lesson is passed, 0 to 1
     * @param exercises 1 to 200 exercises, in order
     */
    public Lesson(
            String id,
            String title,
            String introduction,
            String worldNote,
            double passMarkFraction,
            List<Exercise> exercises) {
        this(id, title, introduction, worldNote, passMarkFraction, exercises, List.of());
    }

    /**
     * Makes a lesson that is part of no course.
     *
     * @param id name of the lesson
     * @param title one line
     * @param introduction what it is about, in Markdown
     * @param worldNote says that its people and places are invented
     * @param passMarkFraction share of the marks from which it is passed, 0 to 1
     * @param exercises 1 to 200 exercises, in order
     * @param pages pages before, between and behind the exercises
     */
    public Lesson(
            String id,
            String title,
            String introduction,
            String worldNote,
            double passMarkFraction,
            List<Exercise> exercises,
            List<LessonPage> pages) {
        this(id, title, introduction, worldNote, passMarkFraction, exercises, pages, Optional.empty());
    }

    /**
     * Finds the pages that come before an exercise.
     *
     * @param number the exercise's number, from 0; the number of exercises for the pages at the end
     * @return the pages in order
     */
    public List<LessonPage> pagesBefore(int number) {
        return pages.stream().filter(page -> page.exercisesBefore() == number).toList();
    }

    /**
     * Finds an exercise by its name.
     *
     * @param exerciseId the exercise's name
     * @return the exercise, if the lesson has it
     */
    public Optional<Exercise> exercise(String exerciseId) {
        return exercises.stream().filter(e -> e.id().equals(exerciseId)).findFirst();
    }
}

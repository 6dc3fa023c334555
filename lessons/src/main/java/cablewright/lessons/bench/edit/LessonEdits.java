// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.Picture;
import cablewright.lessons.exercise.question.Prediction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Edits of the pages of a lesson. Pages that lie between the same exercises keep their order. */
public final class LessonEdits {

    private LessonEdits() {}

    /** Names that exercises and pages have. */
    public static List<String> names(Lesson lesson) {
        List<String> names =
                new ArrayList<>(lesson.exercises().stream().map(Exercise::id).toList());
        lesson.pages().stream().map(LessonPage::id).forEach(names::add);
        return names;
    }

    /** The pages from a place on, moved because an exercise came before them or went. */
    public static List<LessonPage> moved(List<LessonPage> pages, int from, int by) {
        return pages.stream()
                .map(page -> page.exercisesBefore() >= from
                        ? Copies.with(page, "exercisesBefore", page.exercisesBefore() + by)
                        : page)
                .toList();
    }

    /**
     * Adds a page.
     *
     * @param lesson the lesson, whose names it must not have
     * @param page the page; a name that is taken gets a number
     * @return the lesson's pages with it, behind those at the same place
     */
    public static List<LessonPage> with(Lesson lesson, LessonPage page) {
        List<LessonPage> all = new ArrayList<>(lesson.pages());
        all.add(Copies.with(page, "id", FreshNames.free(page.id(), names(lesson))));
        return ordered(all);
    }

    private static List<LessonPage> ordered(List<LessonPage> pages) {
        return pages.stream()
                .sorted(Comparator.comparingInt(LessonPage::exercisesBefore))
                .toList();
    }

    /**
     * Puts a page one place nearer to the start or the end of the lesson: past its neighbour of the same place, or past an
     * exercise.
     *
     * @param lesson the lesson
     * @param index the page's number among the pages, from 0
     * @param by −1 or 1
     * @return the lesson's pages; as they were where there is no such place
     */
    public static List<LessonPage> movedBy(Lesson lesson, int index, int by) {
        List<LessonPage> all = new ArrayList<>(lesson.pages());
        LessonPage page = all.get(index);
        int neighbour = index + by;
        boolean together = neighbour >= 0
                && neighbour < all.size()
                && all.get(neighbour).exercisesBefore() == page.exercisesBefore();
        if (together) {
            all.set(index, all.get(neighbour));
            all.set(neighbour, page);
            return all;
        }
        int place = page.exercisesBefore() + by;
        if (place < 0 || place > lesson.exercises().size()) {
            return lesson.pages();
        }
        all.set(index, Copies.with(page, "exercisesBefore", place));
        return ordered(all);
    }

    /**
     * Changes the title of a page.
     *
     * @param page the page
     * @param title one line
     * @return the page
     */
    public static LessonPage withTitle(LessonPage page, String title) {
        return Copies.with(page, "title", title);
    }

    /**
     * Changes the text of a page.
     *
     * @param page the page
     * @param text Markdown
     * @return the page
     */
    public static LessonPage withText(LessonPage page, String text) {
        return Copies.with(page, "text", text);
    }

    /**
     * Changes the pictures of a page.
     *
     * @param page the page
     * @param pictures the pictures, in order
     * @return the page
     */
    public static LessonPage withPictures(LessonPage page, List<Picture> pictures) {
        return Copies.with(page, "pictures", pictures);
    }

    /**
     * Changes what a page asks first.
     *
     * @param page the page
     * @param prediction the question; empty for none
     * @return the page
     */
    public static LessonPage withPrediction(LessonPage page, Optional<Prediction> prediction) {
        return Copies.with(page, "prediction", prediction);
    }
}

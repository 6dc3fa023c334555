// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.proof;

import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.text.QuantityMark;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Works out again every number that the texts of a lesson state with their source. A text of an exercise speaks of the exercise's
 * cable, one of a page of the page's first figure; {@code NAME: } before the source names another exercise or figure.
 */
public final class LessonNumbers {

    private static final String GIVEN = "given";

    private final Map<String, NumberSource> sources = new HashMap<>();
    private final List<StatedNumber> numbers = new ArrayList<>();

    private LessonNumbers(Lesson lesson) {
        lesson.exercises().forEach(exercise -> sources.put(exercise.id(), NumberSource.of(exercise)));
        lesson.figures().forEach(figure -> sources.put(figure.id(), NumberSource.of(figure)));
        read(lesson.id(), Optional.empty(), textsOf(lesson));
        for (LessonPage page : lesson.pages()) {
            read(page.id(), page.figures().stream().map(LiveFigure::id).findFirst(), textsOf(page));
        }
        for (Exercise exercise : lesson.exercises()) {
            read(exercise.id(), Optional.of(exercise.id()), textsOf(exercise));
        }
    }

    /**
     * Works out the numbers of a lesson.
     *
     * @param lesson the lesson
     * @return each stated number with its source beside what it comes to
     */
    public static List<StatedNumber> of(Lesson lesson) {
        return List.copyOf(new LessonNumbers(lesson).numbers);
    }

    /**
     * Lists the texts of a lesson that stand in no page and no exercise.
     *
     * @param lesson the lesson
     * @return introduction, aim, card and the instructor's notes
     */
    public static Stream<String> textsOf(Lesson lesson) {
        Stream<String> plan = lesson.plan().stream()
                .flatMap(it -> Stream.concat(
                        Stream.of(it.aim(), it.card()),
                        it.instructor().stream()
                                .flatMap(notes -> Stream.concat(
                                        Stream.of(notes.text()),
                                        notes.misreadings().stream()
                                                .flatMap(m -> Stream.of(m.claim(), m.temptation(), m.remedy()))))));
        return Stream.concat(Stream.of(lesson.introduction()), plan);
    }

    /**
     * Lists the texts of a page.
     *
     * @param page the page
     * @return its texts
     */
    public static Stream<String> textsOf(LessonPage page) {
        return Stream.of(
                        Stream.of(page.text()),
                        page.prediction().stream().flatMap(LessonNumbers::textsOf),
                        page.steps().stream().flatMap(step -> Stream.of(step.question(), step.answer())))
                .flatMap(texts -> texts);
    }

    /**
     * Lists the texts of an exercise.
     *
     * @param exercise the exercise
     * @return its texts
     */
    public static Stream<String> textsOf(Exercise exercise) {
        return Stream.of(
                        Stream.of(exercise.brief(), exercise.explanation()),
                        exercise.hints().stream().map(Hint::text),
                        exercise.prediction().stream().flatMap(LessonNumbers::textsOf))
                .flatMap(texts -> texts);
    }

    private static Stream<String> textsOf(Prediction asked) {
        return Stream.concat(
                Stream.of(asked.question(), asked.explanation()),
                Stream.concat(
                                asked.choices().stream(),
                                asked.reasons().stream().flatMap(reasons -> reasons.choices().stream()))
                        .flatMap(choice -> Stream.of(choice.text(), choice.reason())));
    }

    private void read(String place, Optional<String> usual, Stream<String> texts) {
        texts.flatMap(QuantityMark::in)
                .filter(mark -> mark.source().isPresent())
                .filter(mark -> !GIVEN.equals(mark.source().get()))
                .forEach(mark -> numbers.add(workedOut(place, usual, mark)));
    }

    private StatedNumber workedOut(String place, Optional<String> usual, QuantityMark mark) {
        String words = mark.source().orElseThrow();
        int colon = words.indexOf(": ");
        Optional<String> name = colon < 0 ? usual : Optional.of(words.substring(0, colon));
        try {
            NumberSource source = name.map(sources::get).orElse(NumberSource.NONE);
            return new StatedNumber(place, mark, source.value(words.substring(colon < 0 ? 0 : colon + 2)), "");
        } catch (IllegalArgumentException e) {
            return new StatedNumber(place, mark, Double.NaN, e.getMessage());
        }
    }

    /**
     * A number that a text states.
     *
     * @param place id of the page, exercise or lesson whose text states it
     * @param mark the number as stated, with its source
     * @param computed what it comes to; not a number where it can't be worked out
     * @param problem why it can't; empty where it can
     */
    public record StatedNumber(String place, QuantityMark mark, double computed, String problem) {

        /**
         * Returns whether what is stated is what it comes to, in the digits that are stated.
         *
         * @return whether both are one number when written
         */
        public boolean isRight() {
            return Math.abs(computed - mark.value()) <= 0.5000001 * Math.pow(10, -mark.digits());
        }

        /**
         * Writes what the number should be.
         *
         * @return the computed number in the digits that are stated, such as "-24"
         */
        public String corrected() {
            return String.format(Locale.ROOT, "%." + mark.digits() + "f", computed);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.bench.edit.BenchTexts;
import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.bench.edit.FreshNames;
import cablewright.lessons.bench.edit.LessonEdits;
import cablewright.lessons.bench.edit.RecordEdits;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.simulator.cable.Cable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * What is on the Bench: a lesson, and which of its exercises is worked on. Always sound, since each of its parts refuses
 * what can't be: an edit either gives another sound document or throws, and what was there stays.
 *
 * @param lesson the lesson
 * @param index which exercise is worked on, from 0
 * @param language the language of what the Bench itself writes
 */
public record BenchDocument(Lesson lesson, int index, Locale language) {

    /** Refuses a missing lesson and an exercise that it does not have. */
    public BenchDocument {
        if (lesson == null) {
            throw new IllegalArgumentException("lesson is missing; it must be given");
        }
        if (index < 0 || index >= lesson.exercises().size()) {
            throw new IllegalArgumentException("index is " + index + "; allowed is 0 to "
                    + (lesson.exercises().size() - 1));
        }
    }

    /**
     * Puts a lesson on the Bench, in English.
     *
     * @param lesson the lesson
     * @param index number of the exercise that is worked on
     */
    public BenchDocument(Lesson lesson, int index) {
        this(lesson, index, Locale.ROOT);
    }

    /**
     * Puts one exercise on the Bench, in a lesson of its own, in English.
     *
     * @param exercise the exercise
     * @return the document
     */
    public static BenchDocument of(Exercise exercise) {
        return of(exercise, Locale.ROOT);
    }

    /**
     * Puts one exercise on the Bench, in a lesson of its own.
     *
     * @param exercise the exercise
     * @param language the language of what the Bench itself writes
     * @return the document
     */
    public static BenchDocument of(Exercise exercise, Locale language) {
        return new BenchDocument(ExerciseEdits.lessonOf(exercise, new BenchTexts(language)), 0, language);
    }

    /** The sentences that the Bench itself writes. */
    public BenchTexts texts() {
        return new BenchTexts(language);
    }

    public Exercise exercise() {
        return lesson.exercises().get(index);
    }

    public Cable cable() {
        return exercise().cable();
    }

    public AsBuiltRecord record() {
        return exercise().record();
    }

    /**
     * Changes the exercise that is worked on.
     *
     * @param other the exercise in its place
     * @return the document with it
     */
    public BenchDocument with(Exercise other) {
        List<Exercise> all = new ArrayList<>(lesson.exercises());
        all.set(index, other);
        return with(all, index);
    }

    /**
     * Changes the cable that is worked on.
     *
     * @param edit makes another cable of it
     * @return the document with that
     */
    public BenchDocument withCable(UnaryOperator<Cable> edit) {
        return with(ExerciseEdits.withCable(exercise(), edit.apply(cable())));
    }

    /**
     * Changes the cable that is worked on. What only followed from the cable follows it on: a correct record
     * stays correct, a plain explanation stays true, and usual settings stay the usual ones. What somebody changed stays
     * as it is.
     *
     * @param edit makes another cable of it
     * @return the document with that
     */
    public BenchDocument built(UnaryOperator<Cable> edit) {
        Exercise before = exercise();
        Cable old = before.cable();
        Cable cable = edit.apply(old);
        Exercise after = ExerciseEdits.withCable(before, cable);
        BenchTexts texts = texts();
        if (before.record().equals(RecordEdits.of(old, texts))) {
            after = ExerciseEdits.withRecord(after, RecordEdits.of(cable, texts));
        }
        if (before.instrument().equals(UsualView.instrument(old))) {
            after = ExerciseEdits.withInstrument(after, UsualView.instrument(cable));
        }
        if (before.explanation().equals(PlainExplanation.of(old, texts))) {
            after = ExerciseEdits.withExplanation(after, PlainExplanation.of(cable, texts));
        }
        boolean usual = before.permitted().equals(UsualView.permitted(old))
                && before.start().equals(UsualView.start(old));
        return with(
                usual ? ExerciseEdits.withPermitted(after, UsualView.permitted(cable), UsualView.start(cable)) : after);
    }

    /**
     * Changes the record that is worked on.
     *
     * @param edit makes another record of it
     * @return the document with that
     */
    public BenchDocument withRecord(UnaryOperator<AsBuiltRecord> edit) {
        return with(ExerciseEdits.withRecord(exercise(), edit.apply(record())));
    }

    /**
     * Gives an event another name, in the cable and where the record stands for it.
     *
     * @param id its name
     * @param name its name to be
     * @return the document with it
     */
    public BenchDocument renamed(String id, String name) {
        return with(ExerciseEdits.withRecord(
                ExerciseEdits.withCable(exercise(), CableEdits.renamed(cable(), id, name)),
                RecordEdits.renamed(record(), id, name)));
    }

    /**
     * Works on another exercise.
     *
     * @param other its number, from 0
     * @return the document
     */
    public BenchDocument selecting(int other) {
        return new BenchDocument(lesson, other, language);
    }

    /**
     * Adds an exercise after the one that is worked on, and works on it. A name that is taken gets a number.
     *
     * @param exercise the exercise
     * @return the document
     */
    public BenchDocument adding(Exercise exercise) {
        List<String> names = LessonEdits.names(lesson);
        List<Exercise> all = new ArrayList<>(lesson.exercises());
        all.add(index + 1, ExerciseEdits.withId(exercise, FreshNames.free(exercise.id(), names)));
        return with(all, LessonEdits.moved(lesson.pages(), index + 1, 1), index + 1);
    }

    /**
     * Takes away the exercise that is worked on.
     *
     * @return the document without it
     * @throws IllegalArgumentException if it is the only one
     */
    public BenchDocument withoutExercise() {
        List<Exercise> all = new ArrayList<>(lesson.exercises());
        all.remove(index);
        return with(
                all, LessonEdits.moved(lesson.pages(), index + 1, -1), Math.min(index, Math.max(0, all.size() - 1)));
    }

    /**
     * Moves the exercise that is worked on within the lesson.
     *
     * @param by −1 for one place nearer to the start, 1 for one place nearer to the end
     * @return the document; the same one where there is no such place
     */
    public BenchDocument movedBy(int by) {
        int to = index + by;
        if (to < 0 || to >= lesson.exercises().size()) {
            return this;
        }
        List<Exercise> all = new ArrayList<>(lesson.exercises());
        Collections.swap(all, index, to);
        return with(all, to);
    }

    private BenchDocument with(List<Exercise> exercises, int selected) {
        return with(exercises, lesson.pages(), selected);
    }

    private BenchDocument with(List<Exercise> exercises, List<LessonPage> pages, int selected) {
        return new BenchDocument(
                new Lesson(
                        lesson.id(),
                        lesson.title(),
                        lesson.introduction(),
                        lesson.worldNote(),
                        lesson.passMarkFraction(),
                        exercises,
                        pages,
                        lesson.plan()),
                selected,
                language);
    }

    /**
     * Changes the lesson's pages.
     *
     * @param edit makes other pages of these
     * @return the document with those
     */
    public BenchDocument withPages(UnaryOperator<List<LessonPage>> edit) {
        return with(lesson.exercises(), edit.apply(lesson.pages()), index);
    }

    /**
     * Changes the texts of the lesson.
     *
     * @param id its name in files
     * @param title one line
     * @param introduction what it is about, in Markdown
     * @param worldNote says that its people and places are invented
     * @param passMarkFraction share of the marks from which it is passed
     * @return the document
     */
    public BenchDocument withTexts(
            String id, String title, String introduction, String worldNote, double passMarkFraction) {
        return new BenchDocument(
                new Lesson(
                        id,
                        title,
                        introduction,
                        worldNote,
                        passMarkFraction,
                        lesson.exercises(),
                        lesson.pages(),
                        lesson.plan()),
                index,
                language);
    }
}

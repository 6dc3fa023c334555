package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.Marker;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Texts;
import java.time.Clock;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;

/** A lesson being done: its exercises in a row, one of them open. What was done in one stays while another is open. */
public final class PracticeViewModel {

    private final Lesson lesson;
    private final List<ExerciseViewModel> exercises;
    private final ReadOnlyIntegerWrapper index = new ReadOnlyIntegerWrapper(-1);

    /**
     * Opens a lesson at its first exercise.
     *
     * @param lesson the lesson
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param texts texts of the desktop
     * @param clock tells when exercises are opened and committed
     */
    public PracticeViewModel(
            Lesson lesson, ObjectProperty<LengthUnit> unit, Threads threads, Texts texts, Clock clock) {
        this.lesson = lesson;
        Marker marker = new Marker();
        this.exercises = lesson.exercises().stream()
                .map(exercise -> exercise(exercise, marker, unit, threads, texts, clock))
                .toList();
        select(0);
    }

    private static ExerciseViewModel exercise(
            Exercise exercise,
            Marker marker,
            ObjectProperty<LengthUnit> unit,
            Threads threads,
            Texts texts,
            Clock clock) {
        ExerciseViewModel model = new ExerciseViewModel(exercise, marker, threads, texts, clock);
        model.axis().unitProperty().bind(unit);
        return model;
    }

    /**
     * Returns the lesson.
     *
     * @return the lesson
     */
    public Lesson lesson() {
        return lesson;
    }

    /**
     * Returns the exercises.
     *
     * @return their models, in order
     */
    public List<ExerciseViewModel> exercises() {
        return exercises;
    }

    /**
     * Returns which exercise is open.
     *
     * @return its number, from 0
     */
    public ReadOnlyIntegerProperty indexProperty() {
        return index.getReadOnlyProperty();
    }

    /**
     * Returns the open exercise.
     *
     * @return its model
     */
    public ExerciseViewModel current() {
        return exercises.get(index.get());
    }

    /**
     * Opens an exercise.
     *
     * @param number its number, from 0; numbers beyond the lesson do nothing
     */
    public void select(int number) {
        if (number >= 0 && number < exercises.size() && number != index.get()) {
            exercises.get(number).open();
            index.set(number);
        }
    }

    /** Opens the next exercise, if there is one. */
    public void next() {
        select(index.get() + 1);
    }

    /** Opens the exercise before, if there is one. */
    public void previous() {
        select(index.get() - 1);
    }

    /**
     * Tells whether there is a next exercise.
     *
     * @return false at the last
     */
    public boolean hasNext() {
        return index.get() + 1 < exercises.size();
    }
}

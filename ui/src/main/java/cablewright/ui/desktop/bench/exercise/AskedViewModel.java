// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.practice.DifficultyFeatures;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * What the exercise asks for, as marking sees it. It is worked out beside the screen while somebody looks at it; an edit
 * that changes it stops the work and starts it anew.
 */
final class AskedViewModel {

    private final ExerciseEditorViewModel model;
    private final LatestRun runs;
    private final ReadOnlyObjectWrapper<Optional<Asked>> asked = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private AtomicBoolean stop = new AtomicBoolean();
    private Optional<Object> known = Optional.empty();
    private boolean watched;

    AskedViewModel(ExerciseEditorViewModel model, Threads threads) {
        this.model = model;
        this.runs = new LatestRun(threads);
        model.document().documentProperty().addListener((o, before, now) -> look());
    }

    /**
     * What is asked.
     *
     * @param demand each event with its best view
     * @param perfect what a perfect reader hands in
     * @param features what makes it hard
     */
    record Asked(AnswerKey demand, Attempt perfect, DifficultyFeatures features) {

        static Asked of(Exercise exercise, AtomicBoolean stop) {
            AnswerKey demand = AnswerKey.of(exercise, stop::get);
            return new Asked(demand, KeyedAnswer.of(demand), DifficultyFeatures.of(demand));
        }
    }

    /** Says whether somebody looks. */
    void watch(boolean on) {
        watched = on;
        look();
    }

    /** What marking depends on: texts are no part of it. */
    private static Object marked(Exercise it) {
        return List.of(
                it.cable(),
                it.record(),
                it.instrument(),
                it.start(),
                it.permitted(),
                it.toleranceMetres(),
                it.rulings(),
                it.prediction().isPresent(),
                it.endIsGiven());
    }

    private void look() {
        Exercise exercise = model.exercise();
        Object needed = marked(exercise);
        if (!watched || known.equals(Optional.of(needed))) {
            return;
        }
        known = Optional.of(needed);
        stop.set(true);
        AtomicBoolean mine = new AtomicBoolean();
        stop = mine;
        working.set(true);
        problem.set("");
        runs.ask(() -> Asked.of(exercise, mine), found -> show(found, mine), failure -> fail(failure, mine));
    }

    private void show(Asked found, AtomicBoolean mine) {
        if (!mine.get()) {
            working.set(false);
            asked.set(Optional.of(found));
        }
    }

    private void fail(Exception failure, AtomicBoolean mine) {
        if (!mine.get() && !(failure instanceof CancellationException)) {
            working.set(false);
            problem.set(model.texts().say("asked.failed", String.valueOf(failure.getMessage())));
        }
    }

    ReadOnlyObjectProperty<Optional<Asked>> askedProperty() {
        return asked.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}

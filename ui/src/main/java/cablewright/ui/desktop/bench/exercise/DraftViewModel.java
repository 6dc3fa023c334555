// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.ExplanationDrafts;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.desktop.task.Threads;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** The draft of an explanation: made beside the screen, put in place of the text as one step, or thrown away. */
final class DraftViewModel {

    private final ExerciseEditorViewModel model;
    private final Threads threads;
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private AtomicBoolean cancelled = new AtomicBoolean();

    DraftViewModel(ExerciseEditorViewModel model, Threads threads) {
        this.model = model;
        this.threads = threads;
    }

    /** Drafts the explanation of the exercise as it is now. */
    void make() {
        cancelled.set(true);
        AtomicBoolean stop = new AtomicBoolean();
        cancelled = stop;
        working.set(true);
        problem.set("");
        Exercise exercise = model.exercise();
        threads.work().execute(() -> {
            Runnable outcome = outcome(exercise, stop);
            threads.screen().execute(() -> {
                if (!stop.get()) {
                    working.set(false);
                    outcome.run();
                }
            });
        });
    }

    private Runnable outcome(Exercise exercise, AtomicBoolean stop) {
        try {
            String draft = ExplanationDrafts.of(
                    exercise, new PropagationCache(), model.texts().locale(), stop::get);
            return () -> take(exercise, draft);
        } catch (RuntimeException e) {
            return () -> problem.set(model.texts().say("draft.failed", String.valueOf(e.getMessage())));
        }
    }

    /** If another exercise was taken up meanwhile, the draft is not for it. */
    private void take(Exercise exercise, String draft) {
        if (model.exercise().id().equals(exercise.id())) {
            problem.set(model.step(model.texts().say("draft.step"), it -> ExerciseEdits.withExplanation(it, draft))
                    .orElse(""));
        }
    }

    /** Throws the draft away that is being made. */
    void cancel() {
        cancelled.set(true);
        working.set(false);
    }

    ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}

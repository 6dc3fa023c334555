// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.ui.desktop.bench.form.QuestionEditor;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.layout.VBox;

/** The question that is asked before the trace is shown, if there is one. */
final class QuestionSection extends VBox {

    QuestionSection(ExerciseEditorViewModel model) {
        getStyleClass().add("section-fields");
        getChildren()
                .add(new QuestionEditor(
                        "question",
                        model.document(),
                        model.texts(),
                        now -> now.exercise().prediction(),
                        into(model)));
    }

    private static QuestionEditor.Take into(ExerciseEditorViewModel model) {
        return new QuestionEditor.Take() {
            @Override
            public Optional<String> step(String name, UnaryOperator<Optional<Prediction>> edit) {
                return model.step(name, it -> ExerciseEdits.withPrediction(it, edit.apply(it.prediction())));
            }

            @Override
            public Optional<String> type(String name, String field, UnaryOperator<Optional<Prediction>> edit) {
                return model.type(
                        name, "question/" + field, it -> ExerciseEdits.withPrediction(it, edit.apply(it.prediction())));
            }
        };
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.MarkdownField;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The explanation after commit, and the draft of it from the physics. */
final class ExplanationSection extends VBox {

    ExplanationSection(ExerciseEditorViewModel model, DraftViewModel draft) {
        Texts texts = model.texts();
        getStyleClass().add("section-fields");
        MarkdownField text = new MarkdownField(
                "exercise-explanation",
                texts.say("exercise.explanation"),
                new FieldViewModel(
                        model.document(),
                        now -> now.exercise().explanation(),
                        typed -> model.type(
                                texts.say("exercise.step.explanation"),
                                "explanation",
                                it -> ExerciseEdits.withExplanation(it, typed))),
                texts);
        getChildren().addAll(text, draftRow(draft, texts), message(draft));
    }

    private static HBox draftRow(DraftViewModel draft, Texts texts) {
        Button make = new Button(texts.say("draft.make"));
        make.setId("draft-make");
        make.setAccessibleText(texts.say("draft.make.name"));
        make.setOnAction(event -> draft.make());
        make.disableProperty().bind(draft.workingProperty());
        Button cancel = new Button(texts.say("draft.cancel"));
        cancel.setId("draft-cancel");
        cancel.setAccessibleText(texts.say("draft.cancel.name"));
        cancel.setOnAction(event -> draft.cancel());
        ProgressIndicator busy = new ProgressIndicator();
        busy.setAccessibleText(texts.say("draft.working"));
        busy.getStyleClass().add("busy");
        for (Region part : new Region[] {cancel, busy}) {
            part.visibleProperty().bind(draft.workingProperty());
            part.managedProperty().bind(draft.workingProperty());
        }
        HBox row = new HBox(make, cancel, busy);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("item-head");
        return row;
    }

    private static Label message(DraftViewModel draft) {
        Label message = new Label();
        message.setId("draft-message");
        message.setWrapText(true);
        message.setMinHeight(Region.USE_PREF_SIZE);
        message.getStyleClass().add("problem");
        message.textProperty().bind(draft.problemProperty());
        message.visibleProperty().bind(draft.problemProperty().isNotEmpty());
        message.managedProperty().bind(message.visibleProperty());
        return message;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.MarkdownField;
import cablewright.ui.desktop.bench.form.SwitchField;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.words.Words;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What is shown before the trace is read: title, brief, and what can hurt someone. */
final class BriefSection extends VBox {

    BriefSection(ExerciseEditorViewModel model, Words words) {
        Texts texts = model.texts();
        getStyleClass().add("section-fields");
        getChildren()
                .addAll(
                        new TypedField(
                                "exercise-title",
                                texts.say("exercise.title"),
                                new FieldViewModel(
                                        model.document(),
                                        now -> now.exercise().title(),
                                        typed -> model.type(
                                                texts.say("exercise.step.title"),
                                                "title",
                                                it -> ExerciseEdits.withTitle(it, typed)))),
                        new MarkdownField(
                                "exercise-brief",
                                texts.say("exercise.brief"),
                                new FieldViewModel(
                                        model.document(),
                                        now -> now.exercise().brief(),
                                        typed -> model.type(
                                                texts.say("exercise.step.brief"),
                                                "brief",
                                                it -> ExerciseEdits.withBrief(it, typed))),
                                texts),
                        cautions(model, words));
    }

    private static VBox cautions(ExerciseEditorViewModel model, Words words) {
        Texts texts = model.texts();
        Label name = new Label(texts.say("exercise.cautions"));
        name.getStyleClass().add("field-name");
        VBox box = new VBox(name);
        box.getStyleClass().add("caution-list");
        for (Caution caution : Caution.values()) {
            SwitchField field = new SwitchField(
                    "caution-" + caution.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    words.caution(caution),
                    model.document(),
                    now -> now.exercise().cautions().contains(caution),
                    shown -> model.step(
                            texts.say("exercise.step.caution"), it -> ExerciseEdits.withCaution(it, caution, shown)));
            field.setDisable(caution == Caution.LOCAL_CODES);
            box.getChildren().add(field);
        }
        Label always = new Label(texts.say("exercise.cautions.always"));
        always.getStyleClass().add("quiet");
        always.setWrapText(true);
        always.setMinHeight(Region.USE_PREF_SIZE);
        box.getChildren().add(always);
        return box;
    }
}

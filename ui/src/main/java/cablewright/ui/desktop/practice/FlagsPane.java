// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Hint;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.words.KindChoices;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The right column before commit: the flags, hints, and the button that hands them in. */
final class FlagsPane extends VBox {

    private final ExerciseViewModel model;
    private final Texts texts;
    private final FlagList list;

    FlagsPane(ExerciseViewModel model, Texts texts, Words words) {
        this.model = model;
        this.texts = texts;
        list = new FlagList(
                model.flags(),
                model.axis(),
                KindChoices.of(model.exercise()),
                model.phaseProperty().isEqualTo(Phase.READING),
                texts,
                words);
        getStyleClass().addAll("card", "flags");
        setId("flags");
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(list, hints(), advice(), commitButton());
    }

    private Node hints() {
        VBox box = new VBox();
        box.getStyleClass().add("hints");
        List<Hint> all = model.exercise().hints();
        if (all.isEmpty()) {
            box.setVisible(false);
            box.setManaged(false);
            return box;
        }
        Button next = new Button();
        next.setId("hint");
        next.getStyleClass().add("flat");
        next.setMaxWidth(Double.MAX_VALUE);
        next.setOnAction(event -> model.askForHint());
        Runnable show = () -> showHints(box, all, next);
        model.hintsTakenProperty().addListener((o, before, now) -> show.run());
        model.hintAskedProperty().addListener((o, before, now) -> show.run());
        model.phaseProperty().addListener((o, before, now) -> show.run());
        show.run();
        return box;
    }

    private void showHints(VBox box, List<Hint> all, Button next) {
        List<Node> shown = new ArrayList<>();
        int taken = model.hintsTakenProperty().get();
        for (int i = 0; i < taken; i++) {
            MarkdownText hint = new MarkdownText(all.get(i).text(), model.axis().unitProperty());
            hint.getStyleClass().add("hint");
            shown.add(hint);
        }
        if (taken < all.size()) {
            String text = texts.say(
                    model.hintAskedProperty().get() ? "flags.hint.sure" : "flags.hint",
                    taken + 1,
                    all.size(),
                    all.get(taken).costMarks());
            next.setText(text);
            next.setAccessibleText(text);
            next.setDisable(model.phaseProperty().get() != Phase.READING);
            shown.add(next);
        }
        box.getChildren().setAll(shown);
    }

    private Label advice() {
        Label advice = new Label();
        advice.setId("advice");
        advice.setWrapText(true);
        advice.setMinHeight(Region.USE_PREF_SIZE);
        advice.getStyleClass().add("problem");
        advice.textProperty().bind(model.adviceProperty());
        advice.visibleProperty().bind(model.adviceProperty().isNotEmpty());
        advice.managedProperty().bind(advice.visibleProperty());
        return advice;
    }

    private Button commitButton() {
        Button commit = new Button();
        commit.setId("commit");
        commit.getStyleClass().addAll("accent", "main-button");
        commit.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> texts.say(
                                model.phaseProperty().get() == Phase.MARKING ? "flags.marking" : "flags.commit"),
                        model.phaseProperty()));
        commit.accessibleTextProperty().bind(commit.textProperty());
        commit.setMaxWidth(Double.MAX_VALUE);
        commit.setOnAction(event -> model.askToCommit());
        commit.disableProperty().bind(model.phaseProperty().isNotEqualTo(Phase.READING));
        return commit;
    }

    /** Opens the list of kinds of the selected flag; when it closes, keys act on the trace again. */
    void openKinds(Node focusAfter) {
        list.openKinds(focusAfter);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import cablewright.lessons.text.Texts;
import cablewright.ui.demonstrations.Demonstration;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The question with its answers to choose from; after the answer, what was said and why it is so. */
final class QuestionCard extends VBox {

    private final DemonstrationViewModel model;
    private final Texts words;
    private final Texts screen;
    private final String id;
    private Optional<ToggleButton> shownReasons = Optional.empty();
    private boolean isLow;

    QuestionCard(DemonstrationViewModel model, Texts words, Texts screen) {
        this.model = model;
        this.words = words;
        this.screen = screen;
        this.id = model.demonstration().id();
        getStyleClass().addAll("card", "question-card");
        model.answerProperty().addListener(changed -> rebuild());
        rebuild();
    }

    private void rebuild() {
        if (model.answerProperty().get() == DemonstrationViewModel.NO_ANSWER) {
            ask();
        } else {
            tell(model.answerProperty().get());
        }
    }

    private Label wrapped(String text, String styleClass) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(styleClass);
        return label;
    }

    private void ask() {
        ToggleGroup answers = new ToggleGroup();
        ToggleGroup reasons = new ToggleGroup();
        Button done = new Button(screen.say("ask.done"));
        done.setId("answer");
        done.getStyleClass().addAll("accent", "main-button");
        done.setAccessibleText(screen.say("ask.done"));
        done.disableProperty()
                .bind(answers.selectedToggleProperty()
                        .isNull()
                        .or(reasons.selectedToggleProperty().isNull()));
        done.setOnAction(event -> model.answer(chosen(answers), chosen(reasons)));
        getChildren()
                .setAll(
                        wrapped(words.say(id + ".question"), "question"),
                        choices("answer", model.demonstration().answers(), answers),
                        wrapped(screen.say("ask.because"), "quiet"),
                        choices("reason", Demonstration.REASONS, reasons),
                        done,
                        wrapped(screen.say("ask.wait"), "quiet"));
    }

    private VBox choices(String what, int count, ToggleGroup group) {
        VBox box = new VBox();
        box.getStyleClass().add("answers");
        for (int i = 0; i < count; i++) {
            RadioButton choice = new RadioButton(words.say(id + "." + what + "." + i));
            choice.setId(what + "-" + i);
            choice.setWrapText(true);
            choice.setToggleGroup(group);
            choice.setUserData(i);
            choice.setAccessibleText(choice.getText());
            box.getChildren().add(choice);
        }
        return box;
    }

    private static int chosen(ToggleGroup group) {
        return (int) group.getSelectedToggle().getUserData();
    }

    private void tell(int given) {
        boolean right = given == model.demonstration().rightAnswer();
        Label said = wrapped(
                screen.say(
                        right ? "result.right" : "result.wrong",
                        words.say(id + ".answer." + given),
                        words.say(id + ".answer." + model.demonstration().rightAnswer())),
                right ? "outcome-right" : "outcome-wrong");
        boolean understood = model.reason() == model.demonstration().rightReason();
        Label why = wrapped(
                screen.say(
                        understood ? "result.reason.right" : "result.reason.wrong",
                        words.say(id + ".reason." + model.reason()),
                        words.say(id + ".reason." + model.demonstration().rightReason())),
                understood ? "outcome-right" : "outcome-wrong");
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        Button again = new Button(screen.say("result.again"));
        again.setId("ask-again");
        again.getStyleClass().add("small-button");
        again.setMinWidth(Region.USE_PREF_SIZE);
        again.setAccessibleText(screen.say("result.again"));
        again.setOnAction(event -> model.askAgain());
        ToggleButton reasons = new ToggleButton(screen.say("result.why"));
        reasons.setId("show-why");
        reasons.getStyleClass().addAll("small-button", "switch");
        reasons.setMinWidth(Region.USE_PREF_SIZE);
        reasons.setAccessibleText(screen.say("result.why.name"));
        reasons.setSelected(!isLow);
        HBox first = new HBox(said, reasons, again);
        first.setAlignment(Pos.CENTER_LEFT);
        first.getStyleClass().add("answer-result");
        getChildren().setAll(wrapped(words.say(id + ".question"), "quiet"), first);
        for (Label label : List.of(why, wrapped(words.say(id + ".because"), "because"))) {
            label.visibleProperty().bind(reasons.selectedProperty());
            label.managedProperty().bind(reasons.selectedProperty());
            getChildren().add(label);
        }
        shownReasons = Optional.of(reasons);
    }

    /** In a low window the reasons fold away behind a button, so that the figure has the room. */
    void setLow(boolean low) {
        if (low != isLow) {
            isLow = low;
            shownReasons.ifPresent(reasons -> reasons.setSelected(!low));
        }
    }
}

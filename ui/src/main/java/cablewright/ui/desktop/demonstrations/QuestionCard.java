package cablewright.ui.desktop.demonstrations;

import cablewright.ui.words.Texts;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
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
        ToggleGroup group = new ToggleGroup();
        VBox answers = new VBox();
        answers.getStyleClass().add("answers");
        Button done = new Button(screen.say("ask.done"));
        done.setId("answer");
        done.getStyleClass().addAll("accent", "main-button");
        done.setAccessibleText(screen.say("ask.done"));
        done.setDisable(true);
        for (int i = 0; i < model.demonstration().answers(); i++) {
            RadioButton answer = new RadioButton(words.say(id + ".answer." + i));
            answer.setId("answer-" + i);
            answer.setWrapText(true);
            answer.setToggleGroup(group);
            answer.setUserData(i);
            answer.setAccessibleText(answer.getText());
            answers.getChildren().add(answer);
        }
        group.selectedToggleProperty().addListener((o, before, now) -> done.setDisable(now == null));
        done.setOnAction(event -> model.answer((int) group.getSelectedToggle().getUserData()));
        getChildren()
                .setAll(
                        wrapped(words.say(id + ".question"), "question"),
                        answers,
                        done,
                        wrapped(screen.say("ask.wait"), "quiet"));
    }

    private void tell(int given) {
        boolean right = given == model.demonstration().rightAnswer();
        Label said = wrapped(
                screen.say(right ? "told.right" : "told.wrong", words.say(id + ".answer." + given)),
                right ? "outcome-right" : "outcome-wrong");
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        Button again = new Button(screen.say("told.again"));
        again.setId("ask-again");
        again.getStyleClass().add("small-button");
        again.setMinWidth(Region.USE_PREF_SIZE);
        again.setAccessibleText(screen.say("told.again"));
        again.setOnAction(event -> model.askAgain());
        HBox first = new HBox(said, again);
        first.setAlignment(Pos.CENTER_LEFT);
        first.getStyleClass().add("told");
        getChildren()
                .setAll(
                        wrapped(words.say(id + ".question"), "quiet"),
                        first,
                        wrapped(words.say(id + ".because"), "because"));
    }
}

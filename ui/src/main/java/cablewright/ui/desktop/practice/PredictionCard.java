// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The question that is asked before the trace is shown: an answer to choose, and where the lesson asks for it a reason. */
final class PredictionCard extends VBox {

    private final ToggleGroup answers = new ToggleGroup();
    private final ToggleGroup reasons = new ToggleGroup();

    PredictionCard(ExerciseViewModel model, Prediction asked, Texts texts) {
        getStyleClass().add("prediction");
        setId("prediction");
        Label title = new Label(texts.say("prediction.title"));
        title.getStyleClass().add("card-title");
        getChildren()
                .addAll(title, new MarkdownText(asked.question(), model.axis().unitProperty()));
        addChoices(asked.choices(), answers, "choice-");
        BooleanBinding open = answers.selectedToggleProperty().isNull();
        if (asked.reasons().isPresent()) {
            Label because = new Label(texts.say("prediction.because"));
            because.getStyleClass().add("because-title");
            getChildren().add(because);
            addChoices(asked.reasons().map(Reasons::choices).orElseThrow(), reasons, "reason-");
            open = open.or(reasons.selectedToggleProperty().isNull());
        }
        Button answer = new Button(texts.say("prediction.answer"));
        answer.setId("answer");
        answer.getStyleClass().addAll("accent", "main-button");
        answer.setAccessibleText(texts.say("prediction.answer"));
        answer.disableProperty().bind(open);
        answer.setOnAction(event -> model.predict(chosen(answers).orElseThrow(), chosen(reasons)));
        getChildren().add(answer);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    }

    private void addChoices(List<Choice> choices, ToggleGroup group, String idStem) {
        for (Choice choice : choices) {
            RadioButton button = new RadioButton(choice.text());
            button.setId(idStem + choice.id());
            button.setUserData(choice.id());
            button.setToggleGroup(group);
            button.setWrapText(true);
            button.setMinHeight(Region.USE_PREF_SIZE);
            button.setAccessibleText(choice.text());
            getChildren().add(button);
        }
    }

    private static Optional<String> chosen(ToggleGroup group) {
        return Optional.ofNullable(group.getSelectedToggle()).map(toggle -> (String) toggle.getUserData());
    }

    /** Puts the focus on the first answer. */
    void start() {
        ((RadioButton) answers.getToggles().get(0)).requestFocus();
    }
}

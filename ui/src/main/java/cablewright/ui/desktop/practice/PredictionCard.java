package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Choice;
import cablewright.lessons.exercise.Prediction;
import cablewright.ui.words.Texts;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The question that is asked before the trace is shown. */
final class PredictionCard extends VBox {

    private final ToggleGroup group = new ToggleGroup();

    PredictionCard(ExerciseViewModel model, Prediction asked, Texts texts) {
        getStyleClass().add("prediction");
        setId("prediction");
        Label title = new Label(texts.say("prediction.title"));
        title.getStyleClass().add("card-title");
        getChildren().addAll(title, new MarkdownText(asked.question()));
        Button answer = new Button(texts.say("prediction.answer"));
        answer.setId("answer");
        answer.getStyleClass().addAll("accent", "main-button");
        answer.setAccessibleText(texts.say("prediction.answer"));
        answer.disableProperty().bind(group.selectedToggleProperty().isNull());
        answer.setOnAction(
                event -> model.predict((String) group.getSelectedToggle().getUserData()));
        for (Choice choice : asked.choices()) {
            RadioButton button = new RadioButton(choice.text());
            button.setId("choice-" + choice.id());
            button.setUserData(choice.id());
            button.setToggleGroup(group);
            button.setWrapText(true);
            button.setMinHeight(Region.USE_PREF_SIZE);
            button.setAccessibleText(choice.text());
            getChildren().add(button);
        }
        getChildren().add(answer);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    }

    /** Puts the focus on the first answer. */
    void start() {
        ((RadioButton) group.getToggles().get(0)).requestFocus();
    }
}

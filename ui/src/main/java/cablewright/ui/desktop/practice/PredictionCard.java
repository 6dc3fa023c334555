// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.words.LengthUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiConsumer;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The question that is asked before the trace is shown: an answer to choose, and where the lesson asks for it a reason. */
public final class PredictionCard extends VBox {

    private final ToggleGroup answers = new ToggleGroup();
    private final ToggleGroup reasons = new ToggleGroup();

    /**
     * One thing to choose.
     *
     * @param id its name
     * @param text what it says
     */
    public record Option(String id, String text) {}

    /**
     * Asks.
     *
     * @param question the question, in Markdown
     * @param choices its answers
     * @param because reasons of which one is chosen with the answer; none where the answer alone counts
     * @param unit the unit of lengths
     * @param answered hears the answer and the reason
     * @param texts texts of the desktop
     */
    public PredictionCard(
            String question,
            List<Option> choices,
            List<Option> because,
            ObservableValue<LengthUnit> unit,
            BiConsumer<String, Optional<String>> answered,
            Texts texts) {
        getStyleClass().add("prediction");
        setId("prediction");
        Label title = new Label(texts.say("prediction.title"));
        title.getStyleClass().add("card-title");
        getChildren().addAll(title, new MarkdownText(question, unit));
        addChoices(choices, answers, "choice-");
        BooleanBinding open = answers.selectedToggleProperty().isNull();
        if (!because.isEmpty()) {
            Label heading = new Label(texts.say("prediction.because"));
            heading.getStyleClass().add("because-title");
            getChildren().add(heading);
            addChoices(because, reasons, "reason-");
            open = open.or(reasons.selectedToggleProperty().isNull());
        }
        Button answer = new Button(texts.say("prediction.answer"));
        answer.setId("answer");
        answer.getStyleClass().addAll("accent", "main-button");
        answer.setAccessibleText(texts.say("prediction.answer"));
        answer.disableProperty().bind(open);
        answer.setOnAction(event -> answered.accept(chosen(answers).orElseThrow(), chosen(reasons)));
        getChildren().add(answer);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    }

    /**
     * Asks the question of an exercise.
     *
     * @param model the exercise
     * @param asked its question
     * @param texts texts of the desktop
     */
    static PredictionCard of(ExerciseViewModel model, Prediction asked, Texts texts) {
        return new PredictionCard(
                asked.question(),
                mixed(asked.choices(), model.exercise().id()),
                mixed(
                        asked.reasons().map(Reasons::choices).orElse(List.of()),
                        model.exercise().id()),
                model.axis().unitProperty(),
                model::predict,
                texts);
    }

    /** In an order of their own for each exercise, always the same: authors tend to write the right answer first. */
    private static List<Option> mixed(List<Choice> choices, String exerciseId) {
        List<Option> options = new ArrayList<>(choices.stream()
                .map(choice -> new Option(choice.id(), choice.text()))
                .toList());
        Collections.shuffle(options, new Random(exerciseId.hashCode()));
        return options;
    }

    private void addChoices(List<Option> choices, ToggleGroup group, String idStem) {
        for (Option choice : choices) {
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
    public void start() {
        ((RadioButton) answers.getToggles().get(0)).requestFocus();
    }
}

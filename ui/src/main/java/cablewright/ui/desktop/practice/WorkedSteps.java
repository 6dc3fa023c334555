// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.course.WorkedStep;
import cablewright.lessons.text.Texts;
import cablewright.ui.words.LengthUnit;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A worked example: one step after the other, each answered on request, so that the reader decides first. */
final class WorkedSteps extends VBox {

    private final List<WorkedStep> steps;
    private final Texts texts;
    private final ObservableValue<LengthUnit> unit;

    WorkedSteps(List<WorkedStep> steps, Texts texts, ObservableValue<LengthUnit> unit) {
        this.steps = steps;
        this.texts = texts;
        this.unit = unit;
        getStyleClass().add("worked-steps");
        ask(0);
    }

    private void ask(int number) {
        Label question = new Label(
                texts.say("step.question", number + 1, steps.get(number).question()));
        question.setWrapText(true);
        question.setMinHeight(Region.USE_PREF_SIZE);
        question.getStyleClass().add("markdown-heading");
        Button answer = new Button(texts.say("step.answer"));
        answer.setId("step-" + (number + 1));
        answer.setAccessibleText(
                texts.say("step.answer") + ": " + steps.get(number).question());
        answer.setOnAction(event -> answer(number, answer));
        getChildren().addAll(question, answer);
    }

    private void answer(int number, Button button) {
        getChildren()
                .set(
                        getChildren().indexOf(button),
                        new MarkdownText(steps.get(number).answer(), unit));
        if (number + 1 < steps.size()) {
            ask(number + 1);
            getChildren().get(getChildren().size() - 1).requestFocus();
        }
    }
}

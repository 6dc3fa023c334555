// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Picture;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.figure.LiveFigureView;
import cablewright.ui.desktop.practice.model.PageViewModel;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleGroup;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A page of a lesson on the screen. */
final class PageView extends StackPane {

    private static final double MARGINS_PIXELS = 60;

    private final PageViewModel model;
    private final Texts texts;
    private final Words words;
    private final ObservableValue<LengthUnit> unit;
    private final Runnable turn;
    private final VBox sheet = new VBox();
    private final ScrollPane scroll = new ScrollPane(sheet);
    private final ToggleGroup answers = new ToggleGroup();
    private final ToggleGroup reasons = new ToggleGroup();
    private final Button on = new Button();

    PageView(PageViewModel model, Texts texts, Words words, ObservableValue<LengthUnit> unit, Runnable turn) {
        this.words = words;
        this.unit = unit;
        this.model = model;
        this.texts = texts;
        this.turn = turn;
        setId("lesson-page");
        getStyleClass().add("lesson-page");
        sheet.getStyleClass().addAll("card", "lesson-sheet");
        StackPane middle = new StackPane(sheet);
        scroll.setContent(middle);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("left-scroll");
        scroll.setAccessibleText(texts.say("page.name") + ": " + model.page().title());
        scroll.setFocusTraversable(false);
        getChildren().add(scroll);
        on.setId("page-on");
        on.setText(texts.say("page.on"));
        on.setAccessibleText(texts.say("page.on"));
        on.getStyleClass().addAll("accent", "main-button");
        on.setOnAction(event -> turn.run());
        show();
        model.openProperty().addListener((o, before, now) -> {
            show();
            start();
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && model.openProperty().get()) {
            event.consume();
            turn.run();
        }
    }

    private void show() {
        List<Node> shown = new ArrayList<>();
        shown.add(title(model.page().title()));
        if (model.openProperty().get()) {
            model.chosen().forEach(choice -> shown.add(paragraph(texts.say("page.yours", choice.text()))));
            shown.add(new MarkdownText(model.page().text(), unit));
            model.page().pictures().forEach(picture -> shown.add(picture(picture)));
            model.figures().forEach(figure -> shown.add(new LiveFigureView(figure, texts, words, unit)));
            if (!model.page().steps().isEmpty()) {
                shown.add(new WorkedSteps(model.page().steps(), texts, unit));
            }
            model.chosen().forEach(choice -> shown.add(new MarkdownText(choice.reason(), unit)));
            model.page().prediction().ifPresent(asked -> shown.add(new MarkdownText(asked.explanation(), unit)));
            shown.add(on);
        } else {
            ask(model.page().prediction().orElseThrow(), shown);
        }
        sheet.getChildren().setAll(shown);
    }

    private static Label title(String text) {
        Label title = new Label(text);
        title.setWrapText(true);
        title.setMinHeight(Region.USE_PREF_SIZE);
        title.getStyleClass().add("card-title");
        return title;
    }

    private static Label paragraph(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add("quiet");
        return label;
    }

    private void ask(Prediction asked, List<Node> shown) {
        shown.add(paragraph(texts.say("page.predict")));
        shown.add(new MarkdownText(asked.question(), unit));
        addChoices(asked.choices(), answers, "page-choice-", shown);
        BooleanBinding waits = answers.selectedToggleProperty().isNull();
        if (asked.reasons().isPresent()) {
            shown.add(title(texts.say("prediction.because")));
            addChoices(asked.reasons().map(Reasons::choices).orElseThrow(), reasons, "page-reason-", shown);
            waits = waits.or(reasons.selectedToggleProperty().isNull());
        }
        Button answer = new Button(texts.say("page.answer"));
        answer.setId("page-answer");
        answer.getStyleClass().addAll("accent", "main-button");
        answer.setAccessibleText(texts.say("page.answer"));
        answer.disableProperty().bind(waits);
        answer.setOnAction(event -> model.answer(chosen(answers).orElseThrow(), chosen(reasons)));
        shown.add(answer);
    }

    private static Optional<String> chosen(ToggleGroup group) {
        return Optional.ofNullable(group.getSelectedToggle())
                .map(Toggle::getUserData)
                .map(String.class::cast);
    }

    private static void addChoices(List<Choice> choices, ToggleGroup group, String stem, List<Node> shown) {
        for (Choice choice : choices) {
            RadioButton button = new RadioButton(choice.text());
            button.setId(stem + choice.id());
            button.setUserData(choice.id());
            button.setToggleGroup(group);
            button.setWrapText(true);
            button.setMinHeight(Region.USE_PREF_SIZE);
            button.setAccessibleText(choice.text());
            shown.add(button);
        }
    }

    /** A picture at its own size, or as wide as the page; its caption stands beneath and is read to who can't see it. */
    private Node picture(Picture picture) {
        Image image = new Image(new ByteArrayInputStream(picture.bytes()));
        Label caption =
                paragraph(image.isError() ? texts.say("page.broken") + " " + picture.caption() : picture.caption());
        if (image.isError()) {
            return caption;
        }
        ImageView view = new ImageView(image);
        view.setPreserveRatio(true);
        view.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        view.setAccessibleText(picture.caption());
        view.getStyleClass().add("lesson-picture");
        view.fitWidthProperty()
                .bind(sheet.widthProperty()
                        .subtract(MARGINS_PIXELS)
                        .map(room -> Math.max(1, Math.min(image.getWidth(), room.doubleValue()))));
        VBox both = new VBox(view, caption);
        both.getStyleClass().add("lesson-figure");
        return both;
    }

    /** Puts the focus where reading begins: on the first answer, or on the button that goes on. */
    void start() {
        if (model.openProperty().get()) {
            on.requestFocus();
        } else {
            ((RadioButton) answers.getToggles().get(0)).requestFocus();
        }
        scroll.setVvalue(0);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.paper;

import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Columns;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Form;
import cablewright.ui.desktop.practice.MarkdownText;
import cablewright.ui.school.HandOut;
import cablewright.ui.words.Words;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Making a paper on the screen: what is asked at the left, the terms and what trainees are told at the right. */
public final class SealView extends VBox {

    private final SealViewModel model;
    private final Texts texts;
    private final Supplier<Lesson> open;
    private final Supplier<Words> words;
    private final VBox exercises = new VBox();
    private final VBox rules = new VBox();
    private final Label lesson = new Label();

    /**
     * Shows a paper in the making.
     *
     * @param model the paper
     * @param open the lesson that is open in the window
     * @param words the words, in the unit of length that is shown
     * @param texts sentences of these pages
     */
    public SealView(SealViewModel model, Supplier<Lesson> open, Supplier<Words> words, Texts texts) {
        this.model = model;
        this.open = open;
        this.words = words;
        this.texts = texts;
        getStyleClass().add("exam-page");
        VBox left = new VBox(asked(), handOut());
        VBox right = new VBox(terms(), told());
        getChildren().add(Columns.alike(left, right));
        model.lessonProperty().addListener((o, before, now) -> show());
        show();
    }

    private Node asked() {
        Form form = new Form("seal.asked", texts);
        lesson.setWrapText(true);
        lesson.getStyleClass().add("exam-strong");
        form.words("what").add(lesson);
        exercises.getStyleClass().add("exam-list");
        ScrollPane scroll = new ScrollPane(exercises);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(texts.say("seal.asked.title"));
        scroll.getStyleClass().addAll("flag-scroll", "exam-choices");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        form.add(scroll)
                .buttons(
                        form.button("all", "seal-all", () -> choose(true)),
                        form.button("none", "seal-none", () -> choose(false)),
                        form.button("open", "seal-open-lesson", () -> model.take(open.get())))
                .file("file", "seal-lesson-file", model.lessonFileProperty(), FileWish.OPEN)
                .buttons(form.button("read", "seal-read-lesson", model::openLesson));
        VBox.setVgrow(form, Priority.ALWAYS);
        return form;
    }

    private Node handOut() {
        Form form = new Form("hand", texts);
        ComboBox<HandOut> format = new ComboBox<>();
        format.setId("hand-format");
        format.setAccessibleText(texts.say("hand.format"));
        format.getItems().setAll(HandOut.values());
        format.setValue(HandOut.MOODLE);
        format.setMinWidth(Region.USE_PREF_SIZE);
        format.setConverter(new StringConverter<>() {
            @Override
            public String toString(HandOut value) {
                return value == null ? "" : texts.say("hand." + value.name().toLowerCase(Locale.ROOT));
            }

            @Override
            public HandOut fromString(String text) {
                throw new UnsupportedOperationException("formats are chosen and not typed");
            }
        });
        Button make = form.button("make", "hand-make", () -> model.handOut(format.getValue(), words.get()));
        make.disableProperty().bind(model.jobs().busyProperty());
        return form.words("what")
                .file("file", "hand-file", model.handOutFileProperty(), FileWish.SAVE)
                .buttons(format, make);
    }

    private void choose(boolean all) {
        model.asked().values().forEach(asked -> asked.set(all));
    }

    private Node terms() {
        Form form = new Form("seal.terms", texts);
        TextField minutes = new TextField();
        TextField pass = new TextField();
        HBox numbers = new HBox(
                number("minutes", "seal-minutes", minutes),
                new Label(texts.say("seal.terms.minutes.after")),
                number("pass", "seal-pass", pass),
                new Label(texts.say("seal.terms.pass.after")));
        minutes.textProperty().bindBidirectional(model.minutesProperty());
        pass.textProperty().bindBidirectional(model.passProperty());
        numbers.getStyleClass().addAll("exam-pair", "exam-numbers");
        form.field("name", "seal-title", model.titleProperty())
                .row("numbers", numbers)
                .field("key", "seal-key", model.publicKeyProperty())
                .file("target", "seal-target", model.targetProperty(), FileWish.SAVE);
        Button seal = form.button("seal", "seal-paper", model::seal);
        seal.getStyleClass().addAll("accent", "main-button");
        seal.disableProperty().bind(model.jobs().busyProperty());
        ProgressBar busy = new ProgressBar();
        busy.setAccessibleText(texts.say("seal.busy"));
        Label sealing = new Label(texts.say("seal.busy"));
        HBox waiting = new HBox(busy, sealing);
        waiting.getStyleClass().add("exam-pair");
        waiting.visibleProperty().bind(model.jobs().busyProperty());
        return form.buttons(seal, waiting).message("seal-message", model.jobs().saidProperty());
    }

    private TextField number(String key, String id, TextField field) {
        field.setId(id);
        field.setPrefColumnCount(4);
        field.setAccessibleText(texts.say("seal.terms." + key));
        return field;
    }

    private Node told() {
        Form form = new Form("seal.told", texts);
        ScrollPane scroll = new ScrollPane(rules);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(texts.say("seal.told.title"));
        scroll.getStyleClass().add("flag-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        VBox.setVgrow(form, Priority.ALWAYS);
        return form.add(scroll);
    }

    private void show() {
        exercises.getChildren().clear();
        model.asked().forEach((exercise, asked) -> {
            CheckBox box = new CheckBox(exercise.title());
            box.setId("seal-exercise-" + exercise.id());
            box.setMinHeight(Region.USE_PREF_SIZE);
            box.selectedProperty().bindBidirectional(asked);
            box.selectedProperty().addListener((o, before, now) -> showRules());
            exercises.getChildren().add(box);
        });
        lesson.setText(model.lessonProperty().get().map(Lesson::title).orElse(""));
        showRules();
    }

    private void showRules() {
        rules.getChildren().setAll(new MarkdownText(model.rules()));
    }

    /** Takes the open lesson the first time, and puts the focus where work begins. */
    public void start() {
        if (model.lessonProperty().get().isEmpty()) {
            model.take(open.get());
        }
        lookup("#seal-title").requestFocus();
    }
}

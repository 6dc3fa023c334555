// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.sitting.KeptSitting;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Columns;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Form;
import cablewright.ui.desktop.practice.MarkdownText;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Before an exam on the screen: paper and name at the left, what holds and how it is marked at the right. */
public final class StartView extends VBox {

    private final StartViewModel model;
    private final Texts texts;
    private final VBox right = new VBox();
    private final VBox kept = new VBox();

    /**
     * Shows the page.
     *
     * @param model what is chosen
     * @param texts sentences of these pages
     */
    public StartView(StartViewModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
        getStyleClass().add("exam-page");
        VBox left = new VBox(who(), kept);
        kept.getStyleClass().add("exam-column");
        getChildren().add(Columns.alike(left, right));
        model.openedProperty().addListener((o, before, now) -> show(now));
        show(Optional.empty());
    }

    private Node who() {
        Form form = new Form("start", texts);
        form.words("what")
                .file("paper", "start-paper", model.paperFileProperty(), FileWish.OPEN)
                .field("name", "start-name", model.traineeProperty());
        Button open = form.button("open", "start-open", model::openPaper);
        open.getStyleClass().add("accent");
        return form.buttons(open)
                .enter(open)
                .message("start-message", model.jobs().saidProperty());
    }

    private void show(Optional<StartViewModel.Opened> opened) {
        right.getChildren().clear();
        kept.getChildren().clear();
        opened.ifPresent(paper -> {
            right.getChildren().add(terms(paper.paper().paper()));
            if (!paper.kept().isEmpty()) {
                kept.getChildren().add(brokenOff(paper));
            }
        });
    }

    private Node brokenOff(StartViewModel.Opened paper) {
        Form form = new Form("start.kept", texts);
        form.words("what");
        int all = paper.paper().paper().items().size();
        for (KeptSitting one : paper.kept()) {
            Label who = new Label(
                    one.isHandedIn()
                            ? texts.say("start.kept.done", one.trainee())
                            : texts.say("start.kept.row", one.trainee(), one.answered(), all));
            who.setWrapText(true);
            Region space = new Region();
            HBox.setHgrow(space, Priority.ALWAYS);
            Button on = form.button(
                    one.isHandedIn() ? "again" : "on",
                    "start-on-" + paper.kept().indexOf(one),
                    () -> model.goOn(one));
            on.setAccessibleText(on.getText() + ": " + one.trainee());
            HBox row = new HBox(who, space, on);
            row.getStyleClass().add("exam-pair");
            form.add(row);
        }
        return form;
    }

    private Node terms(SealedPaper paper) {
        Form form = new Form("start.terms", texts);
        Label title = new Label(paper.title());
        title.getStyleClass().add("exam-strong");
        title.setWrapText(true);
        Label terms = new Label(texts.say(
                "start.terms.figures",
                paper.items().size(),
                paper.minutesAllowed(),
                String.valueOf(Math.round(100 * paper.passMarkFraction()))));
        terms.setWrapText(true);
        terms.setMinHeight(Region.USE_PREF_SIZE);
        VBox rules = new VBox(new MarkdownText(paper.rules()), new MarkdownText(paper.worldNote()));
        rules.getStyleClass().add("exam-list");
        ScrollPane scroll = new ScrollPane(rules);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(texts.say("start.terms.rules"));
        scroll.getStyleClass().add("flag-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        VBox.setVgrow(form, Priority.ALWAYS);
        Button begin = form.button("begin", "start-begin", model::begin);
        begin.getStyleClass().addAll("accent", "main-button");
        begin.disableProperty().bind(model.jobs().busyProperty());
        return form.add(title).add(terms).add(scroll).words("clock").buttons(begin);
    }

    /** Puts the focus where work begins. */
    public void start() {
        lookup("#start-paper").requestFocus();
    }
}

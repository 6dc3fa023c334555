// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.marking;

import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.result.ItemAnalysis;
import cablewright.lessons.exam.result.PersonResult;
import cablewright.lessons.exam.result.Resemblance;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Columns;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Form;
import cablewright.ui.print.ClassReportPaper;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Marking a class on the screen: what is marked at the left, what came of it at the right. */
public final class MarkingView extends VBox {

    private final MarkingViewModel model;
    private final ObservableValue<LengthUnit> unit;
    private final Texts texts;
    private final Words words;
    private final VBox results = new VBox();
    private final ComboBox<PaperSize> size = new ComboBox<>();

    /**
     * Shows a class.
     *
     * @param model the class
     * @param unit the unit of lengths
     * @param texts sentences of these pages
     * @param words words for kinds and quantities
     */
    public MarkingView(MarkingViewModel model, ObservableValue<LengthUnit> unit, Texts texts, Words words) {
        this.model = model;
        this.unit = unit;
        this.texts = texts;
        this.words = words;
        getStyleClass().add("exam-page");
        VBox left = new VBox(from(), to());
        left.getStyleClass().addAll("exam-column", "exam-side");
        results.getStyleClass().add("exam-column");
        ScrollPane scroll = new ScrollPane(results);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(texts.say("mark.results"));
        scroll.getStyleClass().add("flag-scroll");
        getChildren().add(Columns.beside(left, scroll));
        model.resultProperty().addListener((o, before, now) -> show());
        show();
    }

    private Node from() {
        Form form = new Form("mark", texts);
        TextField due = new TextField();
        due.setId("mark-due");
        due.setPromptText(texts.say("mark.due.prompt"));
        due.textProperty().bindBidirectional(model.dueProperty());
        form.words("what")
                .file("paper", "mark-paper", model.paperFileProperty(), FileWish.OPEN)
                .file("key", "mark-key", model.keyFileProperty(), FileWish.OPEN)
                .file("folder", "mark-folder-of", model.folderProperty(), FileWish.FOLDER)
                .row("due", due);
        Button mark = form.button("mark", "mark-class", model::mark);
        mark.getStyleClass().addAll("accent", "main-button");
        mark.disableProperty().bind(model.jobs().busyProperty());
        ProgressBar bar = new ProgressBar();
        bar.setId("class-progress");
        bar.setAccessibleText(texts.say("mark.progress"));
        bar.progressProperty().bind(model.progressProperty());
        HBox waiting = new HBox(bar, form.button("cancel", "class-cancel", model::cancel));
        waiting.setAlignment(Pos.CENTER_LEFT);
        waiting.getStyleClass().add("exam-pair");
        waiting.visibleProperty().bind(model.jobs().busyProperty());
        return form.buttons(mark, waiting).message("mark-message", model.jobs().saidProperty());
    }

    private Node to() {
        Form form = new Form("mark.to", texts);
        size.getItems().setAll(PaperSize.values());
        size.setValue(PaperSize.A4);
        size.setId("class-paper-size");
        size.setAccessibleText(texts.say("mark.to.size"));
        form.words("what")
                .file("folder", "class-target", model.targetProperty(), FileWish.FOLDER)
                .buttons(form.button("reports", "class-reports", this::write), size)
                .words("keep.what")
                .buttons(form.button("keep", "class-keep", model::keep));
        form.disableProperty()
                .bind(model.resultProperty()
                        .map(it -> it.map(marked -> marked.people().isEmpty()).orElse(true)));
        return form;
    }

    private void write() {
        model.write(size.getValue(), words.with(unit.getValue()));
    }

    private void show() {
        results.getChildren().clear();
        if (model.resultProperty().get().isEmpty()) {
            Label none = new Label(texts.say("mark.none"));
            none.setWrapText(true);
            none.getStyleClass().addAll("quiet", "placeholder-words");
            results.getChildren().add(none);
            return;
        }
        ClassResult marked = model.resultProperty().get().get();
        long passed = marked.people().stream()
                .filter(person -> person.total().passed())
                .count();
        Form people = new Form("mark.people", texts);
        Label figures = new Label(
                texts.say("mark.figures", marked.title(), marked.people().size(), passed));
        figures.setId("class-figures");
        figures.setWrapText(true);
        results.getChildren().add(people.add(figures).add(people(marked.people())));
        if (!marked.setAside().isEmpty()) {
            results.getChildren()
                    .add(lines(
                            new Form("mark.aside", texts),
                            "class-set-aside",
                            new ClassReportPaper(marked, PaperSize.A4, words).setAside()));
        }
        if (!marked.people().isEmpty()) {
            Form items = new Form("mark.items", texts);
            results.getChildren().add(items.words("what").add(items(marked.items())));
        }
        if (!marked.resemblances().isEmpty()) {
            List<String> pairs = marked.resemblances().stream().map(this::pair).toList();
            results.getChildren().add(lines(new Form("mark.alike", texts).words("what"), "class-resemblances", pairs));
        }
    }

    private String pair(Resemblance pair) {
        return texts.say(
                "mark.pair", pair.first(), pair.second(), pair.shared(), Quantities.number(pair.expected(), 1));
    }

    private static Node lines(Form form, String id, List<String> sentences) {
        VBox lines = new VBox();
        lines.setId(id);
        lines.getStyleClass().add("exam-list");
        for (String sentence : sentences) {
            Label line = new Label(sentence);
            line.setWrapText(true);
            line.setMinHeight(Region.USE_PREF_SIZE);
            lines.getChildren().add(line);
        }
        return form.add(lines);
    }

    private Node people(List<PersonResult> people) {
        ResultTable<PersonResult> table = new ResultTable<>("class-people", texts.say("mark.people.title"), people);
        table.column(texts.say("mark.column.name"), 150, PersonResult::name, false);
        table.column(
                texts.say("mark.column.marks"),
                110,
                person -> FindingWords.marks(person.total().marks()) + " / "
                        + FindingWords.marks(person.total().maximum()),
                true);
        table.column(texts.say("mark.column.share"), 70, person -> percent(person.fraction()), true);
        table.column(
                texts.say("mark.column.passed"),
                80,
                person -> texts.say(person.total().passed() ? "mark.yes" : "mark.no"),
                false);
        table.column(
                texts.say("mark.column.minutes"),
                80,
                person -> Quantities.number(person.answers().secondsUsed() / 60, 0),
                true);
        table.column(texts.say("mark.column.receipt"), 190, PersonResult::receipt, false);
        return table;
    }

    private Node items(List<ItemAnalysis> items) {
        ResultTable<ItemAnalysis> table = new ResultTable<>("class-items", texts.say("mark.items.title"), items);
        table.column(texts.say("mark.column.line"), 260, ItemAnalysis::title, false);
        table.column(texts.say("mark.column.answered"), 90, item -> String.valueOf(item.answered()), true);
        table.column(texts.say("mark.column.difficulty"), 130, item -> percent(item.difficulty()), true);
        table.column(
                texts.say("mark.column.discrimination"),
                130,
                item -> item.discrimination().isPresent()
                        ? Quantities.number(item.discrimination().getAsDouble(), 2)
                        : texts.say("mark.unknown"),
                true);
        return table;
    }

    private static String percent(double share) {
        return Quantities.number(100 * share, 0) + "\u00a0%";
    }

    /** Puts the focus where work begins. */
    public void start() {
        lookup("#mark-paper").requestFocus();
    }
}

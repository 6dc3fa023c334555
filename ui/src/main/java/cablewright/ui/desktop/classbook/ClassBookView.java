// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.util.StringConverter;

/** The class book on the screen: attempts at the left, what they show together at the right. */
public final class ClassBookView extends BorderPane {

    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final double NARROW_LETTERS = 92;

    private final ClassBookViewModel model;
    private final ReadOnlyObjectProperty<LengthUnit> unit;
    private final Supplier<Lesson> lesson;
    private final Texts texts;
    private final Words words;
    private final AttemptTable table;
    private final KindRows progress;
    private final ConfusionGrid grid;
    private final ErrorScatter scatter;
    private final FlowPane figures = new FlowPane();
    private final VBox attempts;
    private final VBox cards = new VBox();
    private final ScrollPane scroll = new ScrollPane();
    private boolean narrow;

    /**
     * Shows a book.
     *
     * @param model the book
     * @param traineeName name under which this user's attempts are kept
     * @param unit the unit of lengths
     * @param lesson the lesson that is open, whose answers a folder may hold
     * @param round starts ten exercises of which seven are about one kind
     * @param texts texts of the desktop
     */
    public ClassBookView(
            ClassBookViewModel model,
            StringProperty traineeName,
            ReadOnlyObjectProperty<LengthUnit> unit,
            Supplier<Lesson> lesson,
            Consumer<EventKind> round,
            Texts texts) {
        this.model = model;
        this.unit = unit;
        this.lesson = lesson;
        this.texts = texts;
        this.words = Words.in(unit.get(), texts.locale());
        this.table = new AttemptTable(model.records(), texts);
        this.progress = new KindRows(texts, words);
        this.grid = new ConfusionGrid(texts, words);
        this.scatter = new ErrorScatter(texts, words);
        getStyleClass().add("class-book");
        setTop(new VBox(tools(traineeName), message()));
        attempts = card("classbook.attempts", figures, table);
        VBox.setVgrow(table, Priority.ALWAYS);
        cards.getChildren()
                .addAll(
                        card("classbook.next", new NextStep(model.nextProperty(), words, round, texts)),
                        card("classbook.byKind", progress),
                        card("classbook.confusions", grid),
                        card("classbook.errors", scatter));
        cards.getStyleClass().add("class-cards");
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(texts.say("classbook.summary"));
        scroll.getStyleClass().addAll("flag-scroll", "class-side");
        layOut(false);
        widthProperty().addListener((o, before, now) -> adapt());
        scatter.widthProperty().addListener((o, before, now) -> adapt());
        model.summaryProperty().addListener((o, before, now) -> show());
        unit.addListener((o, before, now) -> show());
        show();
    }

    /** In a narrow window, as a projector's scale makes it, everything stands in one column. */
    private void adapt() {
        boolean wanted = getWidth() < NARROW_LETTERS * scatter.letter();
        if (wanted != narrow) {
            layOut(wanted);
        }
    }

    private void layOut(boolean one) {
        narrow = one;
        pseudoClassStateChanged(NARROW, one);
        setRight(null);
        setCenter(null);
        if (one) {
            scroll.setContent(new VBox(attempts, cards));
            setCenter(scroll);
        } else {
            scroll.setContent(cards);
            setCenter(attempts);
            setRight(scroll);
        }
    }

    private VBox card(String key, Node... content) {
        Label title = new Label(texts.say(key));
        title.getStyleClass().add("card-title");
        VBox card = new VBox(title);
        card.getChildren().addAll(content);
        card.getStyleClass().addAll("card", "class-card");
        return card;
    }

    private FlowPane tools(StringProperty traineeName) {
        TextField name = new TextField();
        name.setId("trainee-name");
        name.setAccessibleText(texts.say("classbook.name.name"));
        name.setPrefColumnCount(10);
        name.textProperty().bindBidirectional(traineeName);
        Label nameLabel = new Label(texts.say("classbook.name"));
        nameLabel.setLabelFor(name);
        HBox named = new HBox(nameLabel, name);
        HBox whose = new HBox(new Label(texts.say("classbook.show")), whose());
        for (HBox pair : List.of(named, whose)) {
            pair.setAlignment(Pos.CENTER_LEFT);
            pair.getStyleClass().add("pair");
        }
        FlowPane tools = new FlowPane(
                named,
                whose,
                button("import", this::chooseLogs),
                button("import-folder", this::chooseLogFolder),
                button("mark-folder", this::chooseAnswers),
                button("export-csv", () -> chooseTarget("records.csv", model::exportCsv)),
                button("export-xapi", () -> chooseTarget("statements.json", model::exportXapi)),
                new PaperButton(model, () -> words.with(unit.get()), this::chooseTarget, texts),
                marking());
        tools.getStyleClass().add("class-tools");
        return tools;
    }

    private ComboBox<Optional<String>> whose() {
        ComboBox<Optional<String>> box = new ComboBox<>();
        box.setId("whose");
        box.setAccessibleText(texts.say("classbook.show.name"));
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(Optional<String> name) {
                return name == null ? "" : name.orElse(texts.say("classbook.everyone"));
            }

            @Override
            public Optional<String> fromString(String text) {
                return Optional.of(text);
            }
        });
        Runnable fill = () -> {
            Optional<String> chosen = model.traineeProperty().get();
            box.getItems().setAll(List.of(Optional.empty()));
            model.trainees().forEach(name -> box.getItems().add(Optional.of(name)));
            box.setValue(chosen);
        };
        fill.run();
        model.trainees().addListener((javafx.collections.ListChangeListener<String>) change -> fill.run());
        box.valueProperty().addListener((o, before, now) -> {
            if (now != null) {
                model.traineeProperty().set(now);
            }
        });
        return box;
    }

    private Button button(String id, Runnable action) {
        Button button = new Button(texts.say("classbook." + id));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setAccessibleText(texts.say("classbook." + id + ".name"));
        button.setOnAction(event -> action.run());
        return button;
    }

    private HBox marking() {
        ProgressBar bar = new ProgressBar();
        bar.setId("marking-progress");
        bar.setAccessibleText(texts.say("classbook.marking"));
        bar.progressProperty().bind(model.progressProperty());
        Button cancel = button("cancel", model::cancel);
        HBox marking = new HBox(bar, cancel);
        marking.setAlignment(Pos.CENTER_LEFT);
        marking.getStyleClass().add("pair");
        marking.visibleProperty().bind(model.progressProperty().greaterThanOrEqualTo(0));
        marking.managedProperty().bind(marking.visibleProperty());
        return marking;
    }

    private Label message() {
        Label message = new Label();
        message.setId("classbook-message");
        message.getStyleClass().add("quiet");
        message.setWrapText(true);
        message.textProperty().bind(model.messageProperty());
        message.managedProperty().bind(message.textProperty().isNotEmpty());
        return message;
    }

    private void chooseLogs() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.say("classbook.import.name"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(texts.say("classbook.logs"), "*.jsonl"));
        List<File> files = chooser.showOpenMultipleDialog(getScene().getWindow());
        if (files != null) {
            model.takeOver(files.stream().map(File::toPath).toList());
        }
    }

    private void chooseLogFolder() {
        folder("classbook.import-folder.name").ifPresent(folder -> model.takeOver(List.of(folder)));
    }

    private void chooseAnswers() {
        folder("classbook.mark-folder.name").ifPresent(folder -> model.mark(lesson.get(), folder));
    }

    private Optional<Path> folder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(texts.say(title));
        return Optional.ofNullable(chooser.showDialog(getScene().getWindow())).map(File::toPath);
    }

    private void chooseTarget(String name, Consumer<Path> export) {
        FileChooser chooser = new FileChooser();
        chooser.setInitialFileName(name);
        Optional.ofNullable(chooser.showSaveDialog(getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(export);
    }

    private void show() {
        ClassSummary summary = model.summaryProperty().get();
        Words inUnit = words.with(unit.get());
        progress.show(summary);
        grid.show(summary);
        scatter.show(summary, inUnit);
        figures.getStyleClass().setAll("class-figures");
        figures.getChildren()
                .setAll(
                        figure(String.valueOf(summary.attempts()), "attempts"),
                        figure(Quantities.number(100 * summary.meanFraction(), 0) + " %", "marks"),
                        figure(String.valueOf(summary.needlessDigs()), "digs"),
                        figure(String.valueOf(summary.damageMissed()), "missed"),
                        figure(String.valueOf(summary.damageLeft()), "left"),
                        figure(AttemptTable.time(medianSeconds()), "time"));
    }

    private VBox figure(String number, String key) {
        Label large = new Label(number);
        large.getStyleClass().add("figure-number");
        large.setMinWidth(Region.USE_PREF_SIZE);
        Label small = new Label(texts.say("classbook.figure." + key));
        small.getStyleClass().add("quiet");
        small.setMinWidth(Region.USE_PREF_SIZE);
        VBox figure = new VBox(large, small);
        figure.setId("figure-" + key);
        figure.setAccessibleText(number + " " + small.getText());
        return figure;
    }

    private OptionalDouble medianSeconds() {
        double[] taken = model.records().stream()
                .map(AttemptRecord::secondsTaken)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sorted()
                .toArray();
        return taken.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(taken[taken.length / 2]);
    }

    /** Reads the logs anew and puts the focus on the table. */
    public void start() {
        model.load();
        table.requestFocus();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.exam.paper.PaperChoice;
import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.paper.PaperQuestion;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.SaidLabel;
import cablewright.ui.desktop.practice.FlagList;
import cablewright.ui.desktop.practice.KnownLength;
import cablewright.ui.desktop.practice.MarkdownText;
import cablewright.ui.desktop.practice.PredictionCard;
import cablewright.ui.desktop.practice.ReadingKeys;
import cablewright.ui.desktop.practice.ReadingTools;
import cablewright.ui.desktop.practice.SettingsShelf;
import cablewright.ui.desktop.track.AxisKeys;
import cablewright.ui.desktop.track.RecordTrack;
import cablewright.ui.desktop.track.TraceTrack;
import cablewright.ui.desktop.track.TrackPointer;
import cablewright.ui.words.KindChoices;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** One line of a paper on the screen: brief, trace and record on one axis, settings; lines and flags beside them. */
final class SittingItemView extends BorderPane {

    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");
    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final double LOW_LETTERS = 57;
    private static final double NARROW_LETTERS = 90;

    private final SittingViewModel sitting;
    private final SittingItemViewModel model;
    private final Texts texts;
    private final Texts desktop;
    private final Words words;
    private final TraceTrack trace;
    private final StackPane traceCard;

    SittingItemView(SittingViewModel sitting, SittingItemViewModel model, Texts texts, Texts desktop, Words words) {
        this.sitting = sitting;
        this.model = model;
        this.texts = texts;
        this.desktop = desktop;
        this.words = words;
        getStyleClass().add("exercise");
        trace = new TraceTrack(model.traceTrack(), desktop.say("trace.caption"), desktop.say("trace.name"));
        TrackPointer.on(trace, model.flags());
        traceCard = card(trace);
        VBox.setVgrow(traceCard, Priority.ALWAYS);
        RecordTrack record = new RecordTrack(
                model.axis(),
                new SimpleObjectProperty<>(model.item().record()),
                model.settings().endProperty(),
                words,
                desktop.say("record.caption"),
                desktop.say("record.name"));
        VBox tracks = new VBox(traceCard, card(record));
        tracks.getStyleClass().add("tracks");
        VBox.setVgrow(tracks, Priority.ALWAYS);
        SettingsShelf shelf = new SettingsShelf(
                model.settings(),
                model.axis(),
                model.workingProperty(),
                model.problemProperty(),
                new ReadingTools(model.traceTrack().aids(), Optional.empty(), desktop),
                desktop,
                words);
        shelf.layOver(traceCard, new KnownLength(model.traceTrack().aids(), model.settings(), model.axis(), desktop));
        VBox left = new VBox(brief(), tracks, shelf);
        left.getStyleClass().add("left-column");
        ScrollPane scroll = new ScrollPane(left);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.setAccessibleText(desktop.say("left.name"));
        scroll.getStyleClass().add("left-scroll");
        setCenter(scroll);
        FlagList flags = new FlagList(
                model.flags(),
                model.axis(),
                KindChoices.all(),
                sitting.openProperty().and(model.askedProperty().not()),
                desktop,
                words);
        setRight(right(flags));
        ReadingKeys keys = new ReadingKeys(
                model.settings(),
                model.traceTrack(),
                model.flags(),
                sitting.openProperty().and(model.askedProperty().not()),
                () -> flags.openKinds(trace));
        // Also inside of the scroll pane, which would otherwise take the arrows for itself.
        left.addEventHandler(KeyEvent.KEY_PRESSED, event -> pressed(event, keys));
        addEventHandler(KeyEvent.KEY_PRESSED, event -> pressed(event, keys));
        model.askedProperty().addListener((o, before, now) -> {
            showQuestion();
            trace.requestFocus();
        });
        widthProperty().addListener((o, before, now) -> adapt());
        heightProperty().addListener((o, before, now) -> adapt());
        showQuestion();
    }

    private static void pressed(KeyEvent event, ReadingKeys keys) {
        if (!AxisKeys.isForTheControl(event) && keys.acted(event)) {
            event.consume();
        }
    }

    private void adapt() {
        double letter = trace.letterSize();
        pseudoClassStateChanged(LOW, getHeight() < LOW_LETTERS * letter);
        pseudoClassStateChanged(NARROW, getWidth() < NARROW_LETTERS * letter);
    }

    private static StackPane card(Node track) {
        StackPane card = new StackPane(track);
        card.getStyleClass().addAll("card", "track-card");
        return card;
    }

    private Node brief() {
        PaperItem item = model.item();
        int number = sitting.items().indexOf(model) + 1;
        Label title = new Label(texts.say("sit.line", number, sitting.items().size(), item.title()));
        title.getStyleClass().add("card-title");
        MarkdownText text = new MarkdownText(item.brief(), model.axis().unitProperty());
        ScrollPane scroll = new ScrollPane(text);
        scroll.setFitToWidth(true);
        scroll.prefViewportHeightProperty().bind(text.heightProperty());
        scroll.getStyleClass().add("brief-scroll");
        scroll.setAccessibleText(desktop.say("brief.name") + ": " + text.getAccessibleText());
        VBox card = new VBox(title, scroll, cautions(item));
        if (item.toleranceMetres().isPresent()) {
            Label tolerance = new Label();
            tolerance.getStyleClass().add("quiet");
            tolerance
                    .textProperty()
                    .bind(model.axis()
                            .unitProperty()
                            .map(unit -> texts.say(
                                    "sit.tolerance",
                                    words.with(unit)
                                            .quantities()
                                            .length(item.toleranceMetres().getAsDouble()))));
            card.getChildren().add(2, tolerance);
        }
        card.getStyleClass().addAll("card", "brief-card");
        card.setId("brief");
        card.setMinHeight(Region.USE_PREF_SIZE);
        return card;
    }

    private Node cautions(PaperItem item) {
        String all = item.cautions().stream().map(words::caution).collect(Collectors.joining("  "));
        Text text = new Text("⚠  " + all);
        text.getStyleClass().add("caution");
        TextFlow flow = new TextFlow(text);
        flow.getStyleClass().add("cautions");
        flow.setMinHeight(Region.USE_PREF_SIZE);
        flow.setAccessibleText(desktop.say("brief.cautions") + ": " + all);
        return flow;
    }

    private Node right(FlagList flags) {
        VBox lines = new VBox(new LineList(sitting, texts));
        lines.getStyleClass().addAll("card", "sitting-lines");
        VBox flagged = new VBox(flags, new SaidLabel("sitting-message", sitting.saidProperty()));
        flagged.getStyleClass().addAll("card", "flags");
        VBox.setVgrow(flags, Priority.ALWAYS);
        VBox.setVgrow(flagged, Priority.ALWAYS);
        VBox right = new VBox(lines, flagged);
        right.getStyleClass().addAll("right-column", "exam-column");
        return right;
    }

    private void showQuestion() {
        traceCard.getChildren().removeIf(PredictionCard.class::isInstance);
        boolean asked = model.askedProperty().get();
        trace.setVisible(!asked);
        if (asked) {
            PaperQuestion question = model.item().question().orElseThrow();
            PredictionCard card = new PredictionCard(
                    question.question(),
                    options(question.choices()),
                    options(question.reasons()),
                    model.axis().unitProperty(),
                    model::answer,
                    desktop);
            traceCard.getChildren().add(card);
            card.setMinHeight(Region.USE_PREF_SIZE);
        }
    }

    private static List<PredictionCard.Option> options(List<PaperChoice> choices) {
        return choices.stream()
                .map(choice -> new PredictionCard.Option(choice.id(), choice.text()))
                .toList();
    }

    /** Puts the focus on the question, or on the trace. */
    void start() {
        traceCard.getChildren().stream()
                .filter(PredictionCard.class::isInstance)
                .map(PredictionCard.class::cast)
                .findFirst()
                .ifPresentOrElse(PredictionCard::start, trace::requestFocus);
    }
}

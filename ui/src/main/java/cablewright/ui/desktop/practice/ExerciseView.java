// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.lattice.LatticeSwitch;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.desktop.track.CableTrack;
import cablewright.ui.desktop.track.RecordTrack;
import cablewright.ui.desktop.track.TraceTrack;
import cablewright.ui.desktop.track.TrackPointer;
import cablewright.ui.words.Words;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** One exercise on the screen: brief, three tracks on one axis, settings shelf, and flags or marks beside them. */
final class ExerciseView extends BorderPane {

    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");
    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final PseudoClass COMMITTED = PseudoClass.getPseudoClass("committed");
    private static final double LOW_LETTERS = 57;
    private static final double NARROW_LETTERS = 90;

    private final PracticeViewModel practice;
    private final ExerciseViewModel model;
    private final Texts texts;
    private final Words words;
    private final TraceTrack trace;
    private final VBox tracks;
    private final StackPane traceCard;
    private final FlagsPane flags;
    private final BriefCard brief;
    private boolean isLow;

    ExerciseView(PracticeViewModel practice, ExerciseViewModel model, Texts texts, Words words) {
        this.practice = practice;
        this.model = model;
        this.texts = texts;
        this.words = words;
        getStyleClass().add("exercise");
        trace = new TraceTrack(model.traceTrack(), texts.say("trace.caption"), texts.say("trace.name"));
        TrackPointer.on(trace, model.flags());
        traceCard = card(trace);
        VBox.setVgrow(traceCard, Priority.ALWAYS);
        RecordTrack record = new RecordTrack(
                model.axis(),
                new SimpleObjectProperty<>(model.exercise().record()),
                model.settings().endProperty(),
                words,
                texts.say("record.caption"),
                texts.say("record.name"));
        CableTrack cable = new CableTrack(model.axis(), model.reveal().cableTrack(), words, texts);
        WavePlayer player = new WavePlayer(model);
        StackPane cableCard = card(cable);
        LatticeSwitch ways = new LatticeSwitch(model.reveal().lattice(), texts);
        Button lattice = ways.button();
        lattice.visibleProperty().bind(model.phaseProperty().isEqualTo(Phase.COMMITTED));
        HBox buttons = new HBox(lattice, playButton(player));
        buttons.setPickOnBounds(false);
        buttons.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        StackPane.setAlignment(buttons, Pos.TOP_RIGHT);
        cableCard.getChildren().add(buttons);
        tracks = new VBox(traceCard, card(record), cableCard);
        ways.in(tracks, trace);
        tracks.getStyleClass().add("tracks");
        VBox.setVgrow(tracks, Priority.ALWAYS);
        brief = new BriefCard(practice, model, texts, words);
        VBox left = new VBox(
                brief,
                tracks,
                new SettingsShelf(
                        model.settings(), model.axis(), model.workingProperty(), model.problemProperty(), texts, words),
                new ReadingBar(
                        model.traceTrack().aids(),
                        model.settings(),
                        model.axis(),
                        model.hasBothEnds() ? Optional.of(model::toggleOtherEnd) : Optional.empty(),
                        texts),
                keyHints());
        left.getStyleClass().add("left-column");
        ScrollPane scroll = new ScrollPane(left);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.setAccessibleText(texts.say("left.name"));
        scroll.getStyleClass().add("left-scroll");
        setCenter(scroll);
        widthProperty().addListener((o, before, now) -> adapt());
        heightProperty().addListener((o, before, now) -> adapt());
        flags = new FlagsPane(model, texts, words);
        flags.getStyleClass().add("right-column");
        showRight();
        model.sheetProperty().addListener((o, before, now) -> showRight());
        model.phaseProperty().addListener((o, before, now) -> phaseChanged(before, now));
        PracticeKeys keys = new PracticeKeys(model, () -> flags.openKinds(trace), player::toggle);
        // Also inside of the scroll pane, which would otherwise take the arrows for itself.
        left.addEventHandler(KeyEvent.KEY_PRESSED, keys::pressed);
        addEventHandler(KeyEvent.KEY_PRESSED, keys::pressed);
        showQuestion();
    }

    /** In a low or narrow window, as a projector's scale makes it, the trace keeps its room and the rest is closer. */
    private void adapt() {
        double letter = trace.letterSize();
        boolean low = getHeight() < LOW_LETTERS * letter;
        if (low != isLow) {
            isLow = low;
            brief.setOpen(!low || !isCommitted());
        }
        pseudoClassStateChanged(LOW, low);
        pseudoClassStateChanged(NARROW, getWidth() < NARROW_LETTERS * letter);
    }

    private boolean isCommitted() {
        return model.sheetProperty().get().isPresent();
    }

    private static StackPane card(Node track) {
        StackPane card = new StackPane(track);
        card.getStyleClass().addAll("card", "track-card");
        return card;
    }

    private Button playButton(WavePlayer player) {
        Button play = new Button("", new FontIcon(Feather.PLAY));
        play.textProperty()
                .bind(model.reveal()
                        .preparingWaveProperty()
                        .map(working -> texts.say(working ? "cable.preparing" : "cable.play")));
        play.disableProperty().bind(model.reveal().preparingWaveProperty());
        play.setId("play-wave");
        play.getStyleClass().addAll("flat", "play-wave");
        play.setAccessibleText(texts.say("cable.play"));
        play.setOnAction(event -> player.toggle());
        play.visibleProperty().bind(model.phaseProperty().isEqualTo(Phase.COMMITTED));
        return play;
    }

    private Label keyHints() {
        Label hints = new Label();
        hints.setId("key-hints");
        hints.getStyleClass().add("key-hints");
        hints.setWrapText(true);
        Runnable show = () -> hints.setText(texts.say(
                model.phaseProperty().get() == Phase.COMMITTED
                        ? "keys.committed"
                        : model.flags().selectedProperty().get().isPresent() ? "keys.selected" : "keys.reading"));
        model.phaseProperty().addListener((o, before, now) -> show.run());
        model.flags().selectedProperty().addListener((o, before, now) -> show.run());
        show.run();
        return hints;
    }

    private void showRight() {
        pseudoClassStateChanged(COMMITTED, isCommitted());
        if (isLow && isCommitted()) {
            brief.setOpen(false);
        }
        if (model.sheetProperty().get().isPresent()) {
            MarkSheet sheet = model.sheetProperty().get().get();
            ResultPane result = new ResultPane(practice, model, sheet, texts, words);
            result.getStyleClass().add("right-column");
            setRight(result);
        } else {
            setRight(flags);
        }
    }

    private void phaseChanged(Phase before, Phase now) {
        if (before == Phase.ASKED) {
            showQuestion();
            trace.requestFocus();
        }
        if (now == Phase.COMMITTED && getRight() instanceof ResultPane) {
            ((ResultPane) getRight()).next().requestFocus();
        }
    }

    private void showQuestion() {
        traceCard.getChildren().removeIf(PredictionCard.class::isInstance);
        boolean asked = model.phaseProperty().get() == Phase.ASKED;
        trace.setVisible(!asked);
        if (asked) {
            PredictionCard question =
                    PredictionCard.of(model, model.exercise().prediction().orElseThrow(), texts);
            traceCard.getChildren().add(question);
            question.setMinHeight(Region.USE_PREF_SIZE);
        }
    }

    /** Puts the focus where work begins: on the question, or on the trace. */
    void start() {
        traceCard.getChildren().stream()
                .filter(PredictionCard.class::isInstance)
                .map(PredictionCard.class::cast)
                .findFirst()
                .ifPresentOrElse(PredictionCard::start, trace::requestFocus);
    }

    Node tracks() {
        return tracks;
    }
}

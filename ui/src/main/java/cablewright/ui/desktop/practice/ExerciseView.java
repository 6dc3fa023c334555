// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.lattice.LatticeSwitch;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.desktop.strip.OneLine;
import cablewright.ui.desktop.strip.ScrollToFocus;
import cablewright.ui.desktop.track.CableTrack;
import cablewright.ui.desktop.track.RecordTrack;
import cablewright.ui.desktop.track.TraceRoom;
import cablewright.ui.desktop.track.TraceTrack;
import cablewright.ui.desktop.track.TrackPointer;
import cablewright.ui.desktop.wave.WaveTimer;
import cablewright.ui.desktop.wave.WaveViewModel;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One exercise on the screen: brief, three tracks on one axis, settings shelf, and flags or marks beside them. */
final class ExerciseView extends BorderPane {

    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");
    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final PseudoClass COMMITTED = PseudoClass.getPseudoClass("committed");
    private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");
    private static final double LOW_LETTERS = 57;
    private static final double TIGHT_LETTERS = 40;
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
    private final OneLine hints = new OneLine();
    private Optional<PredictionCard> asking = Optional.empty();
    private boolean isLow;

    ExerciseView(PracticeViewModel practice, ExerciseViewModel model, Texts texts, Words words) {
        this.practice = practice;
        this.model = model;
        this.texts = texts;
        this.words = words;
        getStyleClass().add("exercise");
        trace = new TraceTrack(model.traceTrack(), texts.say("trace.caption"), texts.say("trace.name"));
        TrackPointer.on(trace, model.flags());
        FlagMenu.on(trace, model, texts);
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
        TraceRoom.keep(this, trace);
        WaveViewModel wave = model.reveal().wave();
        new WaveTimer(wave);
        StackPane cableCard = card(cable);
        LatticeSwitch ways = new LatticeSwitch(model.reveal().lattice(), wave, texts);
        HBox buttons = ways.buttons();
        buttons.visibleProperty().bind(model.phaseProperty().isEqualTo(Phase.COMMITTED));
        cableCard.getChildren().add(buttons);
        cable.buttonsPixelsProperty().bind(buttons.widthProperty());
        tracks = new VBox(traceCard, card(record), cableCard);
        ways.in(tracks, trace);
        tracks.getStyleClass().add("tracks");
        VBox.setVgrow(tracks, Priority.ALWAYS);
        brief = new BriefCard(practice, model, texts, words);
        traceCard.getChildren().add(brief.over());
        SettingsShelf shelf = new SettingsShelf(
                model.settings(),
                model.axis(),
                model.workingProperty(),
                model.problemProperty(),
                new ReadingTools(
                        model.traceTrack().aids(),
                        model.hasBothEnds() ? Optional.of(model::toggleOtherEnd) : Optional.empty(),
                        texts),
                texts,
                words);
        shelf.layOver(traceCard, new KnownLength(model.traceTrack().aids(), model.settings(), model.axis(), texts));
        VBox left = new VBox(brief, tracks, shelf, hints);
        keyHints();
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
        PracticeKeys keys = new PracticeKeys(model, () -> flags.openKinds(trace), wave::toggle);
        // Also inside of the scroll pane, which would otherwise take the arrows for itself.
        left.addEventHandler(KeyEvent.KEY_PRESSED, keys::pressed);
        addEventHandler(KeyEvent.KEY_PRESSED, keys::pressed);
        showQuestion();
    }

    /** In a low or narrow window, as a projector's scale makes it, the trace keeps its room and the rest is closer. */
    private void adapt() {
        double letter = trace.letterSize();
        boolean low = getHeight() < LOW_LETTERS * letter;
        boolean tight = getHeight() < TIGHT_LETTERS * letter;
        hints.setWanted(!tight);
        brief.fit(low, tight, isCommitted(), model.phaseProperty().get() == Phase.ASKED);
        pseudoClassStateChanged(TIGHT, tight);
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

    private void keyHints() {
        hints.setId("key-hints");
        hints.getStyleClass().add("key-hints");
        Runnable show = () -> hints.setText(texts.say(
                model.phaseProperty().get() == Phase.COMMITTED
                        ? "keys.committed"
                        : model.flags().selectedProperty().get().isPresent() ? "keys.selected" : "keys.reading"));
        model.phaseProperty().addListener((o, before, now) -> show.run());
        model.flags().selectedProperty().addListener((o, before, now) -> show.run());
        show.run();
    }

    private void showRight() {
        pseudoClassStateChanged(COMMITTED, isCommitted());
        if (isLow && isCommitted()) {
            brief.setOpen(false);
        }
        adapt();
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
        adapt();
        if (now == Phase.COMMITTED && getRight() instanceof ResultPane) {
            ((ResultPane) getRight()).next().requestFocus();
        }
    }

    private void showQuestion() {
        traceCard.getChildren().removeIf(ScrollPane.class::isInstance);
        asking = Optional.empty();
        boolean asked = model.phaseProperty().get() == Phase.ASKED;
        trace.setVisible(!asked);
        // Before the answer there is no trace to read: the question has the room.
        List<Node> others = tracks.getChildren().subList(1, tracks.getChildren().size());
        others.forEach(track -> track.setManaged(!asked));
        others.forEach(track -> track.setVisible(!asked));
        if (asked) {
            PredictionCard question =
                    PredictionCard.of(model, model.exercise().prediction().orElseThrow(), texts);
            question.setMinHeight(Region.USE_PREF_SIZE);
            ScrollPane scroll = ScrollToFocus.on(new ScrollPane(new StackPane(question)));
            scroll.setFitToWidth(true);
            scroll.setFocusTraversable(false);
            scroll.setAccessibleText(texts.say("prediction.title"));
            scroll.getStyleClass().addAll("flag-scroll", "prediction-scroll");
            asking = Optional.of(question);
            traceCard.getChildren().add(scroll);
        }
    }

    /** Puts the focus where work begins: on the question, or on the trace. */
    void start() {
        asking.ifPresentOrElse(PredictionCard::start, trace::requestFocus);
    }

    Node tracks() {
        return tracks;
    }
}

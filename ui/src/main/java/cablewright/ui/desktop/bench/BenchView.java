// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.model.BenchTraceViewModel;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.EventsViewModel;
import cablewright.ui.desktop.bench.paper.PaperMenu;
import cablewright.ui.desktop.lattice.LatticeSwitch;
import cablewright.ui.desktop.practice.KnownLength;
import cablewright.ui.desktop.practice.ReadingTools;
import cablewright.ui.desktop.practice.SettingsShelf;
import cablewright.ui.desktop.strip.OneLine;
import cablewright.ui.desktop.track.CableTrack;
import cablewright.ui.desktop.track.FlagMarkerActions;
import cablewright.ui.desktop.track.RecordTrack;
import cablewright.ui.desktop.track.TraceRoom;
import cablewright.ui.desktop.track.TraceTrack;
import cablewright.ui.desktop.track.TrackPointer;
import cablewright.ui.desktop.wave.WaveTimer;
import cablewright.ui.words.LengthUnit;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseDragEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.util.Duration;

/** The Bench on the screen: bar, three tracks on one axis, palette and settings; the document's sides in tabs beside them. */
public final class BenchView extends BorderPane {

    /** Full name of the Bench's bundle of sentences. */
    public static final String BUNDLE = "cablewright.ui.desktop.bench.bench";

    private static final String STYLE = "bench.css";
    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");
    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final PseudoClass WRITING = PseudoClass.getPseudoClass("writing");
    private static final PseudoClass ARMED = PseudoClass.getPseudoClass("armed");
    private static final Duration REST = Duration.seconds(1);
    private static final double LOW_LETTERS = 62;
    private static final double TIGHT_LETTERS = 42;
    private static final double NARROW_LETTERS = 95;

    private final BenchViewModel model;
    private final TraceTrack trace;
    private final RecordTrack record;
    private final CableTrack cable;
    private final VBox tracks;
    private final InsertPalette palette;
    private final OneLine hints;
    private final BenchTabs tabs;
    private final FileDialogs files;
    private final PauseTransition rest = new PauseTransition(REST);

    /**
     * Lays the Bench out.
     *
     * @param model the Bench
     * @param desktop texts of the desktop, which tracks and settings say
     * @param unit the unit of lengths
     * @param tryIt opens the exercise as a trainee sees it
     */
    public BenchView(BenchViewModel model, Texts desktop, ObjectProperty<LengthUnit> unit, Runnable tryIt) {
        this.model = model;
        Texts texts = model.texts();
        getStyleClass().addAll("bench", "exercise");
        getStylesheets().add(BenchView.class.getResource(STYLE).toExternalForm());
        BenchTraceViewModel port = model.trace();
        trace = new TraceTrack(port.traceTrack(), desktop.say("trace.caption"), desktop.say("trace.name"));
        TrackPointer.on(trace, onTrace());
        record = new RecordTrack(
                port.axis(),
                Bindings.createObjectBinding(
                        () -> model.document().now().record(), model.document().documentProperty()),
                port.endProperty(),
                model.words(),
                desktop.say("record.caption"),
                desktop.say("record.name"));
        cable = new CableTrack(port.axis(), port.cableTrack(), model.words(), desktop, model.events());
        StackPane traceCard = card(trace);
        VBox.setVgrow(traceCard, Priority.ALWAYS);
        TraceRoom.keep(this, trace);
        new WaveTimer(port.wave());
        LatticeSwitch ways = new LatticeSwitch(port.lattice(), port.wave(), desktop);
        StackPane cableCard = card(cable);
        HBox buttons = ways.buttons();
        cableCard.getChildren().add(buttons);
        cable.buttonsPixelsProperty().bind(buttons.widthProperty());
        tracks = new VBox(traceCard, card(record), cableCard);
        tracks.getStyleClass().add("tracks");
        ways.in(tracks, trace);
        palette = new InsertPalette(model);
        HBox middle = new HBox(palette, tracks);
        middle.getStyleClass().add("bench-middle");
        HBox.setHgrow(tracks, Priority.ALWAYS);
        VBox.setVgrow(middle, Priority.ALWAYS);
        SettingsShelf shelf = new SettingsShelf(
                port.settings(),
                port.axis(),
                port.workingProperty(),
                port.problemProperty(),
                new ReadingTools(port.traceTrack().aids(), Optional.empty(), desktop),
                desktop,
                model.words());
        shelf.layOver(traceCard, new KnownLength(port.traceTrack().aids(), port.settings(), port.axis(), desktop));
        hints = hints(texts);
        VBox left = new VBox(middle, shelf, hints);
        left.getStyleClass().add("left-column");
        setCenter(scrolling(left, texts.say("left.name")));
        tabs = new BenchTabs(model, unit, tryIt);
        tabs.getStyleClass().add("right-column");
        setRight(tabs);
        record.edit(new DrawingActions(model, record.selectedProperty(), () -> tabs.show("record")));
        files = new FileDialogs(model.files(), texts, () -> getScene().getWindow());
        BenchBar bar = new BenchBar(model, files);
        ToggleButton writing = bar.writing();
        bar.getChildren().add(writing);
        writing.selectedProperty().addListener((o, before, now) -> write(now));
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.F4) {
                writing.fire();
                event.consume();
            }
        });
        bar.getChildren().add(PaperMenu.of(model, unit, this::tracks));
        setTop(new VBox(bar, new NoticeBars(model.files().notices(), texts)));
        BenchKeys keys = new BenchKeys(model, files, this::openInsertMenu, tabs);
        left.addEventHandler(KeyEvent.KEY_PRESSED, keys::pressed);
        addEventHandler(KeyEvent.KEY_PRESSED, keys::pressed);
        tracks.addEventFilter(MouseEvent.MOUSE_CLICKED, this::clicked);
        tracks.addEventFilter(MouseDragEvent.MOUSE_DRAG_OVER, event -> cable.carryCursorTo(event.getSceneX()));
        tracks.addEventFilter(MouseDragEvent.MOUSE_DRAG_RELEASED, event -> {
            cable.carryCursorTo(event.getSceneX());
            model.events().insertArmed();
        });
        new BenchPlaceMenu(model, palette::menuItems, tabs).on(cable, trace);
        model.events().onPlacing(this::openInsertMenu);
        model.events().armedProperty().addListener((o, before, now) -> pseudoClassStateChanged(ARMED, now.isPresent()));
        rest.setOnFinished(event -> model.files().keep());
        model.document().documentProperty().addListener(changed -> rest.playFromStart());
        widthProperty().addListener(changed -> adapt());
        heightProperty().addListener(changed -> adapt());
    }

    /** On the trace nothing can be taken hold of; a double click puts something on the cable there. */
    private FlagMarkerActions onTrace() {
        return new FlagMarkerActions() {
            @Override
            public void select(String letter) {
                // The Bench has no flags.
            }

            @Override
            public void drag(String letter, boolean secondStaff, double metres) {
                // The Bench has no flags.
            }

            @Override
            public void drop() {
                // The Bench has no flags.
            }

            @Override
            public void place(double metres) {
                model.events().place(metres);
            }
        };
    }

    /** While somebody writes, the editors are wide and the palette makes room; the trace stays beside them. */
    private void write(boolean now) {
        pseudoClassStateChanged(WRITING, now);
        palette.setVisible(!now);
        palette.setManaged(!now);
        if (now && tabs.isInspecting()) {
            tabs.show("exercise");
        }
    }

    private void adapt() {
        double letter = trace.letterSize();
        pseudoClassStateChanged(LOW, getHeight() < LOW_LETTERS * letter);
        boolean tight = getHeight() < TIGHT_LETTERS * letter;
        hints.setWanted(!tight);
        pseudoClassStateChanged(NARROW, getWidth() < NARROW_LETTERS * letter);
    }

    private static StackPane card(Node track) {
        StackPane card = new StackPane(track);
        card.getStyleClass().addAll("card", "track-card");
        return card;
    }

    private static ScrollPane scrolling(Node content, String name) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.setAccessibleText(name);
        scroll.getStyleClass().add("left-scroll");
        return scroll;
    }

    /** One line of keys that mean something just now, or why the last thing could not be done. */
    private OneLine hints(Texts texts) {
        OneLine hints = new OneLine();
        hints.setId("bench-hints");
        hints.getStyleClass().add("key-hints");
        EventsViewModel events = model.events();
        hints.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> hint(events, texts::say),
                        events.armedProperty(),
                        events.selectedProperty(),
                        events.awaitsLetterProperty(),
                        events.faultProperty()));
        return hints;
    }

    private String hint(EventsViewModel events, Function<String, String> say) {
        if (!events.faultProperty().get().isEmpty()) {
            return events.faultProperty().get();
        }
        if (events.armedProperty().get().isPresent()) {
            return model.texts()
                    .say(
                            "hints.armed",
                            model.names().name(events.armedProperty().get().get()));
        }
        if (events.awaitsLetterProperty().get()) {
            return say.apply("hints.letter");
        }
        return say.apply(events.selected().isEmpty() ? "hints.none" : "hints.selected");
    }

    /** What is armed goes where the tracks are clicked. */
    private void clicked(MouseEvent event) {
        if (model.events().armedProperty().get().isPresent()) {
            model.events().insertArmed();
            event.consume();
        }
    }

    /** Offers what can be put at the cursor, beside it. */
    private void openInsertMenu() {
        double x = Math.max(0, Math.min(cable.getWidth(), cable.cursorPixel()));
        var corner = cable.localToScreen(x + 8, 0);
        if (corner != null) {
            ContextMenu menu = palette.menu();
            double top = Screen.getPrimary().getVisualBounds().getMinY();
            menu.show(cable, corner.getX(), Math.max(top, corner.getY() - 200));
        }
    }

    public BenchViewModel model() {
        return model;
    }

    /**
     * Puts what a file holds on the Bench.
     *
     * @param file the file
     */
    public void open(Path file) {
        model.files().open(file);
    }

    /**
     * Asked before the window closes.
     *
     * @param close closes the window without asking again
     * @return whether it may close now
     */
    public boolean mayClose(Runnable close) {
        return model.files().mayClose(close, files::saveAsThen);
    }

    /** Puts the focus where work begins. */
    public void start() {
        applyCss();
        cable.requestFocus();
    }

    public Node tracks() {
        return tracks;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Event;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.CablePainter;
import cablewright.ui.drawing.track.TrackSheet;
import cablewright.ui.drawing.track.WavePainter;
import cablewright.ui.words.EventWords;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.AccessibleRole;

/** What is there: hidden until commit, then the cable to scale, with its impedance, its events and cuts across it. */
public final class CableTrack extends Track {

    private static final double REACH = 8;
    private static final double SHUT_HEIGHT = 22;

    private final CableTrackViewModel model;
    private final Words words;
    private final Texts texts;
    private final EventLine eventLine;
    private final DoubleProperty buttonsPixels = new SimpleDoubleProperty();

    /**
     * Makes a shut track.
     *
     * @param axis the shared axis
     * @param model what it shows
     * @param words names of events
     * @param texts texts of the desktop
     */
    public CableTrack(AxisViewModel axis, CableTrackViewModel model, Words words, Texts texts) {
        super(axis);
        this.model = model;
        this.words = words;
        this.texts = texts;
        this.eventLine = new EventLine(model.cableProperty()::get, texts);
        setId("cable-track");
        getStyleClass().add("cable-track");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        redrawOn(model.drawingProperty(), model.sightsProperty(), model.selectedProperty());
        redrawOn(buttonsPixels);
        redrawOverlayOn(model.waveProperty(), model.frameProperty());
        model.drawingProperty().addListener((o, before, now) -> speak());
        model.sightsProperty().addListener((o, before, now) -> speak());
        axis.unitProperty().addListener((o, before, now) -> speak());
        speak();
        TrackPointer.on(this);
    }

    /**
     * Makes a track that is built on: events are selected and dragged with the pointer.
     *
     * @param axis the shared axis
     * @param model what it shows
     * @param words names of events
     * @param texts texts of the desktop
     * @param actions what becomes of events
     */
    public CableTrack(AxisViewModel axis, CableTrackViewModel model, Words words, Texts texts, MarkActions actions) {
        this(axis, model, words, texts);
        setFocusTraversable(true);
        TrackPointer.on(this, new MarkGrips(this, this::grips, actions));
    }

    /**
     * Returns how much of the right upper corner buttons cover.
     *
     * @return width of the buttons [pixels]
     */
    public DoubleProperty buttonsPixelsProperty() {
        return buttonsPixels;
    }

    /**
     * Sets the position of the cursor on this track.
     *
     * @return pixels from its left edge
     */
    public double cursorPixel() {
        return view().pixel(cursorMetres());
    }

    /**
     * Carries the cursor with a pointer that drags something in.
     *
     * @param sceneX where the pointer is, across the window
     */
    public void carryCursorTo(double sceneX) {
        axis().moveCursorTo(view().metres(sceneToLocal(sceneX, 0).getX()));
    }

    private List<MarkGrips.Mark> grips() {
        return model.drawingProperty().get().map(CableDrawing::marks).orElse(List.of()).stream()
                .map(mark -> new MarkGrips.Mark(mark.event().id(), mark.shownFromMetres(), mark.shownToMetres()))
                .toList();
    }

    Words words() {
        return words.with(axis().unitProperty().get());
    }

    private void speak() {
        Optional<CableDrawing> drawing = model.drawingProperty().get();
        if (drawing.isEmpty()) {
            setAccessibleText(texts.say("cable.shut"));
            return;
        }
        StringBuilder said = new StringBuilder(texts.say("cable.open"));
        EventWords details = new EventWords(words());
        for (CableDrawing.Mark mark : drawing.get().marks()) {
            said.append(". ")
                    .append(texts.say(
                            "cable.event",
                            words().quantities().length(mark.shownFromMetres()),
                            words().kind(mark.event().kind()),
                            details.detail(mark.event()),
                            visibilityOf(mark.event()).map(this::name).orElse("")));
        }
        setAccessibleText(said.toString());
    }

    private String name(Visibility visibility) {
        return texts.say("visibility." + visibility.name().toLowerCase(java.util.Locale.ROOT));
    }

    private Optional<Visibility> visibilityOf(Event event) {
        return model.sightsProperty().get().stream()
                .filter(sight -> sight.eventId().equals(event.id()))
                .map(EventVisibility::visibility)
                .findFirst();
    }

    private boolean isOpen() {
        return model.drawingProperty().get().isPresent();
    }

    private double buttonsLeft() {
        return getWidth() - buttonsPixels.get();
    }

    private CablePainter painter(TrackSheet sheet) {
        return new CablePainter(sheet, words(), true);
    }

    @Override
    void draw(TrackSheet sheet) {
        CablePainter painter = painter(sheet);
        Optional<CableDrawing> drawing = model.drawingProperty().get();
        if (drawing.isEmpty()) {
            painter.drawGrid();
            painter.drawRemark(texts.say("cable.shut"));
            return;
        }
        CablePainter.Labels labels = new CablePainter.Labels(
                event -> words().kind(event.kind()),
                this::visibilityOf,
                model.selectedProperty().get());
        painter.draw(drawing.get(), labels, texts.say("cable.caption"));
        painter.drawLegend(this::name, texts.say("cable.legend"), buttonsLeft());
    }

    @Override
    void drawOverlay(TrackSheet sheet) {
        sheet.drawCursor(cursorMetres(), 0, getHeight(), false);
        model.drawingProperty().get().flatMap(this::lineAtCursor).ifPresent(line -> painter(sheet)
                .drawLine(line, buttonsLeft()));
        if (isOpen() && model.isPlaying()) {
            new WavePainter(sheet, painter(sheet).lane())
                    .draw(
                            model.waveProperty().get().orElseThrow(),
                            model.frameProperty().get(),
                            model.clipVoltsProperty().get());
        }
    }

    /** While the cursor is on an event, the first line describes it in place of the legend. */
    private Optional<String> lineAtCursor(CableDrawing drawing) {
        double reach = REACH * scale() * view().metresPerPixel();
        return eventLine
                .at(drawing, cursorMetres(), reach)
                .map(mark -> eventLine.tell(mark, model.sightsProperty().get(), words()));
    }

    @Override
    protected double computeMinHeight(double width) {
        return (isOpen() ? CablePainter.LEAST_HEIGHT : SHUT_HEIGHT) * scale();
    }

    @Override
    protected double computePrefHeight(double width) {
        return (isOpen() ? CablePainter.HEIGHT_WITH_LANE : SHUT_HEIGHT) * scale();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Event;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.ui.drawing.axis.LabelRows;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.EventWords;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/** What is there: shut until commit, then the cable to scale, with its impedance, its events and cuts across it. */
public final class CableTrack extends Track {

    /** In a lower window than this the trace needs the room more than cuts across the cable do. */
    private static final double LOW_WINDOW = 660;

    private static final double REACH = 8;
    private static final double BUTTONS_PIXELS = 255;
    private static final double SHUT_HEIGHT = 28;
    private static final double OPEN_HEIGHT = 200;
    private static final double OPEN_HEIGHT_WITHOUT_CUTS = 146;

    private final CableTrackViewModel model;
    private final Words words;
    private final Texts texts;
    private final ImpedancePainter impedance = new ImpedancePainter(this);
    private final CableBodyPainter bodyPainter = new CableBodyPainter(this);
    private final EventSymbols symbols = new EventSymbols(this);
    private final EndSymbol endSymbol = new EndSymbol(this);
    private final EventLine eventLine;
    private final CutsPainter cuts;
    private final WavePainter wave = new WavePainter(this);

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
        this.cuts = new CutsPainter(this, texts);
        this.eventLine = new EventLine(model.cableProperty()::get, texts);
        setId("cable-track");
        getStyleClass().add("cable-track");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        redrawOn(model.drawingProperty(), model.sightsProperty(), model.selectedProperty());
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
     * Sets the position of the cursor on this track.
     *
     * @return pixels from its left edge
     */
    public double hairPixel() {
        return view().pixel(axis().hairMetresProperty().get());
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

    private Body body() {
        return new Body(84 * scale(), 108 * scale());
    }

    @Override
    void draw(GraphicsContext g) {
        drawDistanceGrid(g, 0, getHeight());
        if (isOpen()) {
            drawOpen(g, model.drawingProperty().get().orElseThrow());
        }
        drawCaption(g);
    }

    private void drawCaption(GraphicsContext g) {
        g.setFont(smallFont());
        g.setFill(ink(Ink.FAINT));
        if (isOpen()) {
            g.setTextAlign(TextAlignment.RIGHT);
            g.setTextBaseline(VPos.CENTER);
            g.fillText(texts.say("cable.caption"), gutter() - 9 * scale(), body().middle());
            drawLegend(g);
        } else {
            g.setTextAlign(TextAlignment.CENTER);
            g.setTextBaseline(VPos.CENTER);
            g.fillText(texts.say("cable.shut"), gutter() + view().widthPixels() / 2, getHeight() / 2);
        }
    }

    private void drawOpen(GraphicsContext g, CableDrawing drawing) {
        impedance.draw(g, drawing, 27 * scale(), 62 * scale());
        bodyPainter.draw(g, drawing, body());
        g.save();
        g.beginPath();
        g.rect(gutter() - 12 * scale(), 0, getWidth() - gutter() - rightMargin() + 24 * scale(), getHeight());
        g.clip();
        endSymbol.draw(g, drawing, body(), words());
        for (CableDrawing.Mark mark : drawing.marks()) {
            symbols.draw(
                    g, mark.event(), view().pixel(mark.shownFromMetres()), view().pixel(mark.shownToMetres()), body());
        }
        drawing.marks().stream()
                .filter(mark ->
                        model.selectedProperty().get().contains(mark.event().id()))
                .forEach(mark -> drawSelected(g, mark));
        g.restore();
        drawNames(g, drawing);
        if (getHeight() >= (OPEN_HEIGHT - 8) * scale()) {
            cuts.draw(g, drawing, getHeight() - 24 * scale());
        }
    }

    /** A frame around what is selected, wide enough to be seen around a thing at one place. */
    private void drawSelected(GraphicsContext g, CableDrawing.Mark mark) {
        double air = 12 * scale();
        double from = view().pixel(mark.shownFromMetres()) - air;
        double to = view().pixel(mark.shownToMetres()) + air;
        g.setStroke(ink(Ink.TRACE));
        g.setLineWidth(1.8 * scale());
        g.strokeRoundRect(
                from, body().top() - 11 * scale(), to - from, body().height() + 22 * scale(), 9 * scale(), 9 * scale());
    }

    private boolean isShown(double x) {
        return x >= gutter() - 1 && x <= getWidth() - rightMargin() + 1;
    }

    private void drawNames(GraphicsContext g, CableDrawing drawing) {
        LabelRows rows = new LabelRows(gutter() - 20 * scale(), getWidth() - 8 * scale(), 8 * scale(), 2);
        for (CableDrawing.Mark mark : drawing.marks()) {
            double from = Math.max(gutter(), view().pixel(mark.shownFromMetres()));
            double to = Math.min(getWidth() - rightMargin(), view().pixel(mark.shownToMetres()));
            double x = (from + to) / 2;
            if (to >= from && isShown(x)) {
                drawName(g, mark.event(), x, rows);
            }
        }
    }

    private void drawName(GraphicsContext g, Event event, double x, LabelRows rows) {
        String name = words().kind(event.kind());
        double dot = 9 * scale();
        double width = TextSize.width(name, smallFont()) + dot + 4 * scale();
        rows.next(x, width).ifPresent(place -> {
            double y = body().bottom() + (20 + 14 * place.row()) * scale();
            visibilityOf(event).ifPresent(seen -> drawDot(g, seen, place.leftPixels() + dot / 2, y));
            g.setFont(smallFont());
            g.setFill(ink(Ink.TEXT));
            g.setTextAlign(TextAlignment.LEFT);
            g.setTextBaseline(VPos.CENTER);
            g.fillText(name, place.leftPixels() + dot + 4 * scale(), y);
        });
    }

    /** Full, half or hollow: seen, doubtful, hidden. */
    private void drawDot(GraphicsContext g, Visibility visibility, double x, double y) {
        double r = 4 * scale();
        Ink colour = visibility == Visibility.CLEAR
                ? Ink.SEEN
                : visibility == Visibility.MARGINAL ? Ink.DOUBTFUL : Ink.HIDDEN;
        g.setStroke(ink(colour));
        g.setFill(ink(colour));
        g.setLineWidth(1.3 * scale());
        if (visibility == Visibility.CLEAR) {
            g.fillOval(x - r, y - r, 2 * r, 2 * r);
        } else if (visibility == Visibility.MARGINAL) {
            g.fillArc(x - r, y - r, 2 * r, 2 * r, 90, 180, javafx.scene.shape.ArcType.CHORD);
        }
        g.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }

    private void drawLegend(GraphicsContext g) {
        double x = gutter() + 4 * scale();
        double y = 11 * scale();
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.CENTER);
        for (Visibility visibility : Visibility.values()) {
            drawDot(g, visibility, x + 4 * scale(), y);
            g.setFill(ink(Ink.FAINT));
            g.setFont(smallFont());
            String text = name(visibility);
            g.fillText(text, x + 13 * scale(), y);
            x += 24 * scale() + TextSize.width(text, smallFont());
        }
        double button = BUTTONS_PIXELS * scale();
        if (x + TextSize.width(texts.say("cable.legend"), smallFont()) < getWidth() - button) {
            g.setFill(ink(Ink.FAINT));
            g.fillText(texts.say("cable.legend"), x, y);
        }
    }

    @Override
    void drawOverlay(GraphicsContext g) {
        drawHair(g, 0, getHeight());
        model.drawingProperty().get().ifPresent(drawing -> drawEventLine(g, drawing));
        if (isOpen() && model.isPlaying()) {
            wave.draw(
                    g,
                    model.waveProperty().get().orElseThrow(),
                    model.frameProperty().get(),
                    model.clipVoltsProperty().get(),
                    50 * scale(),
                    24 * scale());
        }
    }

    /** While the cursor is on an event, the first line describes it in place of the legend. */
    private void drawEventLine(GraphicsContext g, CableDrawing drawing) {
        double reach = REACH * scale() * view().metresPerPixel();
        double hair = axis().hairMetresProperty().get();
        eventLine.at(drawing, hair, reach).ifPresent(mark -> {
            double right = getWidth() - BUTTONS_PIXELS * scale();
            g.setFill(ink(Ink.PAPER));
            g.fillRect(gutter() - 16 * scale(), 2 * scale(), right - gutter() + 16 * scale(), 18 * scale());
            String line = eventLine.tell(mark, model.sightsProperty().get(), words());
            g.setFont(smallFont());
            g.setFill(ink(Ink.TEXT));
            g.setTextAlign(TextAlignment.LEFT);
            g.setTextBaseline(VPos.CENTER);
            g.fillText(TextSize.cut(line, smallFont(), right - gutter()), gutter(), 11 * scale());
        });
    }

    @Override
    protected double computeMinHeight(double width) {
        return (isOpen() ? OPEN_HEIGHT_WITHOUT_CUTS : SHUT_HEIGHT) * scale();
    }

    @Override
    protected double computePrefHeight(double width) {
        boolean low = getScene() != null && getScene().getHeight() < LOW_WINDOW * scale();
        return (isOpen() ? low ? OPEN_HEIGHT_WITHOUT_CUTS : OPEN_HEIGHT : SHUT_HEIGHT) * scale();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.text.Texts;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.track.FlagLayout;
import cablewright.ui.drawing.track.FlagPainter;
import cablewright.ui.drawing.track.TracePainter;
import cablewright.ui.drawing.track.TracePainter.Look;
import cablewright.ui.drawing.track.TrackSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;

/** What the port shows: reflection in percent of the outgoing wave against distance, with flags and the cursor. */
public final class TraceTrack extends Track {

    private static final double LOW_PLOT = 110;

    private final TraceTrackViewModel model;
    private final String caption;
    private final Texts texts;
    private final CursorReadout readOut = new CursorReadout();
    private FlagLayout flags;
    private ReducedCurve curve;

    /**
     * Makes the track.
     *
     * @param model what it shows
     * @param caption what stands in its corner
     * @param accessibleName what a screen reader calls it
     */
    public TraceTrack(TraceTrackViewModel model, String caption, String accessibleName) {
        super(model.axis());
        this.model = model;
        this.caption = caption;
        this.texts = model.texts().sibling(TrackSheet.BUNDLE);
        getStyleClass().add("trace-track");
        setId("trace-track");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(readOut);
        flags = new FlagLayout(List.of(), view(), 0, 1);
        redrawOn(
                model.traceProperty(),
                model.comparisonProperty(),
                model.noiseShownProperty(),
                model.lookHereProperty(),
                model.writtenToProperty(),
                model.aids().otherProperty());
        redrawOverlayOn(model.pennantsProperty(), model.aids().secondMetresProperty());
        model.aids().secondMetresProperty().addListener((o, before, now) -> speak());
        model.aids().otherProperty().addListener((o, before, now) -> speak());
        accessibleTextProperty().set(accessibleName);
        model.axis().cursorMetresProperty().addListener((o, before, now) -> speak());
        model.traceProperty().addListener((o, before, now) -> speak());
        speak();
    }

    private void speak() {
        String read = model.reading().map(TraceTrackViewModel.Reading::spoken).orElse("");
        String further = further();
        setAccessibleHelp(further.isEmpty() ? read : read + ", " + further.replace("\n", ", "));
    }

    /** What the second cursor and the other trace add to the reading. */
    private String further() {
        return Stream.of(model.aids().between(), model.aids().difference())
                .flatMap(Optional::stream)
                .collect(Collectors.joining("\n"));
    }

    FlagLayout flags() {
        return flags;
    }

    TraceTrackViewModel model() {
        return model;
    }

    /**
     * Returns the size of the letters, with which everything grows.
     *
     * @return size of the font [pixels]
     */
    public double letterSize() {
        return fontSize();
    }

    private Box plot() {
        return TracePainter.plotOf(area(), scale());
    }

    private PercentScale scaleOf(Trace trace) {
        return PercentScale.ofClipLevel(trace.clipVolts(), plot().y(), plot().height());
    }

    @Override
    void draw(TrackSheet sheet) {
        Trace trace = model.traceProperty().get();
        if (trace == null) {
            new TracePainter(sheet, PercentScale.ofClipLevel(1, plot().y(), plot().height())).drawDistances();
            return;
        }
        TracePainter painter = new TracePainter(sheet, scaleOf(trace));
        List<Look> legend = new ArrayList<>();
        painter.drawLookHere(model.lookHereProperty().get());
        if (model.noiseShownProperty().get()) {
            painter.drawNoise(trace.noiseVolts());
            legend.add(new Look(texts.say("legend.noise"), Ink.NOISE, 0));
        }
        painter.drawGrid(false);
        others().forEach((look, other) -> {
            painter.drawCurve(painter.reduce(other), look);
            legend.add(look);
        });
        curve = painter.reduce(trace);
        OptionalDouble written = model.writtenToProperty().get();
        if (written.isPresent()) {
            painter.drawWritten(curve, Look.TRACE, written.getAsDouble());
        } else {
            painter.drawCurve(curve, Look.TRACE);
        }
        painter.drawClipping(curve, trace.clipVolts());
        if (!legend.isEmpty()) {
            legend.add(0, new Look(texts.say("legend.trace"), Ink.TRACE, 0));
            painter.drawLegend(legend);
        }
    }

    /** The traces that are laid over this one, distinguished by colour and dashes. */
    private Map<Look, Trace> others() {
        Map<Look, Trace> others = new LinkedHashMap<>();
        Optional.ofNullable(model.comparisonProperty().get())
                .ifPresent(other -> others.put(new Look(texts.say("legend.compared"), Ink.OTHER_TRACE, 5), other));
        model.aids().otherProperty().get().ifPresent(other -> {
            String name = texts.say(other.mirrored() ? "legend.otherEnd" : "legend.kept");
            others.put(new Look(name, Ink.KEPT_TRACE, 8), other.trace());
        });
        model.aids()
                .differenceTrace()
                .ifPresent(difference ->
                        others.put(new Look(texts.say("legend.difference"), Ink.OTHER_TRACE, 2), difference));
        return others;
    }

    @Override
    void drawOverlay(TrackSheet sheet) {
        Box plot = plot();
        flags = new FlagPainter(sheet).draw(model.pennantsProperty().get());
        model.aids()
                .secondMetresProperty()
                .get()
                .ifPresent(metres -> sheet.drawCursor(metres, plot.y(), plot.bottom(), true));
        sheet.drawCursor(cursorMetres(), plot.y(), plot.bottom(), false);
        Trace trace = model.traceProperty().get();
        if (trace == null) {
            readOut.setVisible(false);
            new TracePainter(sheet, PercentScale.ofClipLevel(1, plot.y(), plot.height()))
                    .drawCaption(caption, view().leftPixels());
            return;
        }
        TracePainter painter = new TracePainter(sheet, scaleOf(trace));
        painter.drawBead(cursorMetres(), trace.voltsAt(cursorMetres()));
        readOut.show(model.reading().orElseThrow(), further(), plot.height() < LOW_PLOT * scale());
        readOut.place(this, curve, scaleOf(trace), plot);
        painter.drawCaption(caption, view().leftPixels() + (readOut.isFlat() ? readOut.getWidth() : 0));
    }

    @Override
    protected double computeMinHeight(double width) {
        return 130 * scale();
    }

    @Override
    protected double computePrefHeight(double width) {
        return 150 * scale();
    }
}

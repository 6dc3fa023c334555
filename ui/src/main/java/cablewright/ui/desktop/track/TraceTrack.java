// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.simulator.instrument.Trace;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.axis.TraceLine;
import cablewright.ui.words.Quantities;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;

/** What the port shows: reflection in percent of the outgoing wave against distance, with flags and the cursor. */
public final class TraceTrack extends Track {

    private static final double NOISE_SIGMAS = 3;
    private static final double LEAST_LOOK_PIXELS = 6;
    private static final double LOW_PLOT = 210;

    private final TraceTrackViewModel model;
    private final String caption;
    private final FlagMarkerPainter pennants = new FlagMarkerPainter(this);
    private final CursorReadout readOut = new CursorReadout();

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
        getStyleClass().add("trace-track");
        setId("trace-track");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(readOut);
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
        model.axis().hairMetresProperty().addListener((o, before, now) -> speak());
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

    FlagMarkerPainter pennants() {
        return pennants;
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
        return font().getSize();
    }

    private double plotTop() {
        return 20 * scale();
    }

    private double plotBottom() {
        return getHeight() - 28 * scale();
    }

    private PercentScale scaleOf(Trace trace) {
        return PercentScale.ofClipLevel(trace.clipVolts(), plotTop(), Math.max(1, plotBottom() - plotTop()));
    }

    @Override
    void draw(GraphicsContext g) {
        drawDistanceGrid(g, plotTop(), plotBottom());
        drawDistanceLabels(g);
        Trace trace = model.traceProperty().get();
        if (trace != null) {
            PercentScale vertical = scaleOf(trace);
            drawPercentGrid(g, vertical);
            clipToPlot(g);
            drawLookHere(g);
            if (model.noiseShownProperty().get()) {
                drawNoise(g, trace, vertical);
            }
            if (model.comparisonProperty().get() != null) {
                g.setLineDashes(6 * scale(), 3 * scale());
                drawTrace(g, model.comparisonProperty().get(), vertical, ink(Ink.OTHER_TRACE));
                g.setLineDashes();
            }
            drawOther(g, vertical);
            drawWritten(g, trace, vertical);
            g.restore();
            drawClipping(g, trace, vertical);
        }
    }

    /** The other trace dashed in grey, and its difference dotted. */
    private void drawOther(GraphicsContext g, PercentScale vertical) {
        model.aids().otherProperty().get().ifPresent(other -> {
            g.setLineDashes(10 * scale(), 4 * scale());
            drawTrace(g, other.trace(), vertical, ink(Ink.PROFILE));
            g.setLineDashes();
        });
        model.aids().differenceTrace().ifPresent(difference -> {
            g.setLineDashes(1.5 * scale(), 3 * scale());
            drawTrace(g, difference, vertical, ink(Ink.OTHER_TRACE));
            g.setLineDashes();
        });
    }

    private void drawSecond(GraphicsContext g) {
        model.aids().secondMetresProperty().get().ifPresent(metres -> {
            double x = view().pixel(metres);
            if (x >= gutter() - 1 && x <= getWidth() - rightMargin() + 1) {
                g.setStroke(ink(Ink.HAIR));
                g.setLineWidth(Math.max(1, scale()));
                g.setLineDashes(3 * scale(), 3 * scale());
                g.strokeLine(sharp(x), plotTop(), sharp(x), plotBottom());
                g.setLineDashes();
            }
        });
    }

    private void clipToPlot(GraphicsContext g) {
        g.save();
        g.beginPath();
        g.rect(gutter(), plotTop(), view().widthPixels(), plotBottom() - plotTop());
        g.clip();
    }

    private void drawDistanceLabels(GraphicsContext g) {
        Ticks ticks = distanceTicks();
        g.setFill(ink(Ink.FAINT));
        g.setFont(smallFont());
        g.setTextBaseline(VPos.TOP);
        g.setTextAlign(TextAlignment.CENTER);
        for (double metres : ticks.values()) {
            g.fillText(
                    quantities().length(metres, ticks.digits()),
                    Math.min(view().pixel(metres), getWidth() - 24 * scale()),
                    plotBottom() + 7 * scale());
        }
    }

    private void drawPercentGrid(GraphicsContext g, PercentScale vertical) {
        double half = 100 * vertical.halfSpanShare();
        Ticks ticks = Ticks.between(-half, half, (int) Math.max(4, vertical.heightPixels() / (34 * scale())));
        g.setFont(smallFont());
        g.setTextBaseline(VPos.CENTER);
        g.setTextAlign(TextAlignment.RIGHT);
        for (double percent : ticks.values()) {
            double y = sharp(vertical.pixel(percent / 100));
            g.setStroke(ink(Math.abs(percent) < ticks.step() / 2 ? Ink.AXIS : Ink.GRID));
            g.setLineWidth(1);
            g.strokeLine(gutter(), y, getWidth() - rightMargin(), y);
            g.setFill(ink(Ink.FAINT));
            String sign = percent > ticks.step() / 2 ? "+" : "";
            String text = Math.abs(percent) < ticks.step() / 2
                    ? "0 %"
                    : sign + Quantities.number(percent, ticks.digits()) + " %";
            g.fillText(text, gutter() - 8 * scale(), y);
        }
    }

    /** A band behind the trace, with a bar at its foot that can be recognised without colour. */
    private void drawLookHere(GraphicsContext g) {
        for (Extent stretch : model.lookHereProperty().get()) {
            double from = view().pixel(stretch.fromMetres());
            double width = Math.max(LEAST_LOOK_PIXELS * scale(), view().pixel(stretch.toMetres()) - from);
            g.setFill(ink(Ink.NOISE).deriveColor(0, 1, 1, 0.22));
            g.fillRect(from, plotTop(), width, plotBottom() - plotTop());
            g.setFill(ink(Ink.TRACE));
            g.fillRect(from, plotBottom() - 3 * scale(), width, 3 * scale());
        }
    }

    private void drawTrace(GraphicsContext g, Trace trace, PercentScale vertical, Color colour) {
        TraceLine line = TraceLine.of(trace, view());
        g.setStroke(colour);
        g.setLineWidth(1.5 * scale());
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.strokePolyline(line.copyOfX(), line.copyOfY(vertical), line.count());
    }

    /** While a wave plays, what the port has not received yet is faint. */
    private void drawWritten(GraphicsContext g, Trace trace, PercentScale vertical) {
        if (model.writtenToProperty().get().isEmpty()) {
            drawTrace(g, trace, vertical, ink(Ink.TRACE));
            return;
        }
        drawTrace(g, trace, vertical, ink(Ink.TRACE).deriveColor(0, 1, 1, 0.25));
        double now = view().pixel(model.writtenToProperty().get().getAsDouble());
        if (now > gutter()) {
            g.save();
            g.beginPath();
            g.rect(gutter(), 0, now - gutter(), getHeight());
            g.clip();
            drawTrace(g, trace, vertical, ink(Ink.TRACE));
            g.restore();
        }
    }

    private void drawNoise(GraphicsContext g, Trace trace, PercentScale vertical) {
        double high = vertical.pixel(NOISE_SIGMAS * trace.noiseVolts());
        double low = vertical.pixel(-NOISE_SIGMAS * trace.noiseVolts());
        g.setFill(ink(Ink.NOISE).deriveColor(0, 1, 1, 0.25));
        g.fillRect(gutter(), high, view().widthPixels(), Math.max(1, low - high));
    }

    /** Where the converter clips, the picture says so: a dashed level and a bar over the clipped stretch. */
    private void drawClipping(GraphicsContext g, Trace trace, PercentScale vertical) {
        TraceLine line = TraceLine.of(trace, view());
        double level = trace.clipVolts() * (1 - 1e-9);
        g.setStroke(ink(Ink.CLIP));
        g.setLineWidth(4 * scale());
        for (int sign = -1; sign <= 1; sign += 2) {
            double y = vertical.pixel(sign * trace.clipVolts());
            int i = 0;
            while (i < line.count()) {
                int from = i;
                while (i < line.count() && sign * line.share(i) >= level) {
                    i++;
                }
                double left = from < line.count() ? Math.max(gutter(), line.x(from)) : 0;
                double right = i > from ? Math.min(getWidth() - rightMargin(), line.x(i - 1)) : 0;
                if (i > from && right >= left) {
                    g.strokeLine(left, y, Math.max(right, left + 2 * scale()), y);
                }
                i = Math.max(i, from + 1);
            }
        }
    }

    /** The caption, if there is room for it beside what stands in its line. */
    private void drawCaption(GraphicsContext g, double left) {
        if (left + TextSize.width(caption, smallFont()) > getWidth() - rightMargin() - 12 * scale()) {
            return;
        }
        g.setFill(ink(Ink.FAINT));
        g.setFont(smallFont());
        g.setTextAlign(TextAlignment.RIGHT);
        g.setTextBaseline(VPos.TOP);
        g.fillText(caption, getWidth() - rightMargin() - 4 * scale(), 2 * scale());
    }

    @Override
    void drawOverlay(GraphicsContext g) {
        pennants.draw(g, model.pennantsProperty().get(), plotTop(), plotBottom());
        drawSecond(g);
        drawHair(g, plotTop(), plotBottom());
        Trace trace = model.traceProperty().get();
        if (trace == null) {
            readOut.setVisible(false);
            drawCaption(g, gutter());
            return;
        }
        drawBead(g, trace);
        readOut.show(model.reading().orElseThrow(), further(), plotBottom() - plotTop() < LOW_PLOT * scale());
        readOut.place(this, TraceLine.of(trace, view()), scaleOf(trace), plotTop(), plotBottom());
        drawCaption(g, readOut.isFlat() ? gutter() + readOut.getWidth() : gutter());
    }

    private void drawBead(GraphicsContext g, Trace trace) {
        double metres = axis().hairMetresProperty().get();
        double x = view().pixel(metres);
        double y = scaleOf(trace).pixel(trace.voltsAt(metres));
        if (x >= gutter() - 1 && x <= getWidth() - rightMargin() + 1) {
            double r = 4 * scale();
            g.setFill(ink(Ink.PAPER));
            g.fillOval(sharp(x) - r, y - r, 2 * r, 2 * r);
            g.setStroke(ink(Ink.TRACE));
            g.setLineWidth(2 * scale());
            g.strokeOval(sharp(x) - r, y - r, 2 * r, 2 * r);
        }
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

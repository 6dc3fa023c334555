// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.figure;

import cablewright.lessons.study.FigureVariation;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.screen.DrawingSurface;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.CablePainter;
import cablewright.ui.drawing.track.TracePainter;
import cablewright.ui.drawing.track.TrackSheet;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import javafx.beans.value.ObservableValue;

/** Draws the trace of a live figure over its cable. */
final class FigureSurface extends DrawingSurface {

    private static final double TRACE_FONTS_HIGH = 15;
    private static final double CABLE_HEIGHT = 120;
    private static final double LETTERS = 0.92;

    private final LiveFigureViewModel model;
    private final Words words;
    private final ObservableValue<LengthUnit> unit;

    FigureSurface(LiveFigureViewModel model, Words words, ObservableValue<LengthUnit> unit) {
        this.model = model;
        this.words = words;
        this.unit = unit;
        getStyleClass().add("figure-view");
        redrawOn(model.shownProperty(), unit);
    }

    private double letters() {
        return LETTERS * fontSize();
    }

    private double cableHeight() {
        return CABLE_HEIGHT * TrackSheet.scale(letters());
    }

    @Override
    protected double computePrefHeight(double width) {
        return TRACE_FONTS_HIGH * letters() + cableHeight();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void draw(Pen pen) {
        model.shownProperty().get().ifPresent(shown -> draw(pen, shown));
    }

    private void draw(Pen pen, FigureVariation.Shown shown) {
        Settings settings = shown.trace().settings();
        Extent extent = Extent.ofRange(settings.rangeMetres());
        DistanceView view = new DistanceView(extent.fromMetres(), extent.toMetres(), 0, 1);
        double traceHeight = getHeight() - cableHeight();
        Box strip = new Box(0, 0, getWidth(), traceHeight);
        TrackSheet sheet = new TrackSheet(pen, palette(), strip, view, unit.getValue(), letters());
        Box plot = TracePainter.plotOf(strip, sheet.scale());
        PercentScale vertical =
                new PercentScale(0, LiveFigureViewModel.halfSpan(shown.trace()), plot.y(), plot.height());
        TracePainter painter = new TracePainter(sheet, vertical);
        painter.drawGrid(false);
        ReducedCurve curve = painter.reduce(shown.trace());
        painter.drawCurve(curve, TracePainter.Look.TRACE);
        painter.drawClipping(curve, Double.POSITIVE_INFINITY);
        Box below = new Box(0, traceHeight, getWidth(), cableHeight());
        TrackSheet cable = new TrackSheet(pen, palette(), below, view, unit.getValue(), letters());
        CableDrawing drawing = CableDrawing.of(
                shown.cable(),
                LineEnd.NEAR,
                settings.velocityFraction(),
                settings.stimulus().topHertz());
        new CablePainter(cable, words.with(unit.getValue()))
                .draw(drawing, CablePainter.Labels.of(event -> words.kind(event.kind())), "");
    }
}

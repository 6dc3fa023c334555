// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.sheet;

import cablewright.lessons.text.Texts;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.crosssection.datasheet.DataSheetFit;
import cablewright.ui.desktop.bench.sheet.DataSheetViewModel.Fitted;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;

/** Attenuation against frequency, both by their logarithms: the sheet as rings, the fit as a line. */
final class FitChart extends Region {

    private static final double HEIGHT_LETTERS = 13;
    private static final double HUNDRED_METRES = 100;
    private static final double RING = 4;

    private final Texts texts;
    private final Label top = new Label();
    private final Label bottom = new Label();
    private final Label left = new Label();
    private final Label right = new Label();
    private Optional<Fitted> shown = Optional.empty();

    FitChart(Texts texts) {
        this.texts = texts;
        setId("sheet-chart");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getStyleClass().add("fit-chart");
        List.of(top, bottom, left, right).forEach(label -> label.getStyleClass().add("quiet"));
    }

    void show(Fitted fitted) {
        shown = Optional.of(fitted);
        DataSheetFit fit = fitted.section().fit();
        setAccessibleText(texts.say("sheet.chart", fit.points().size(), Quantities.number(100 * fit.relativeRms(), 1)));
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return HEIGHT_LETTERS * top.getFont().getSize();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        shown.ifPresent(fitted -> getChildren().setAll(drawn(fitted)));
        for (Label label : List.of(top, bottom, left, right)) {
            label.autosize();
        }
        place();
    }

    private double edge() {
        return 1.6 * top.getFont().getSize();
    }

    private void place() {
        double letter = top.getFont().getSize();
        top.relocate(4, 0);
        bottom.relocate(4, getHeight() - edge() - 1.5 * letter);
        left.relocate(gutter(), getHeight() - edge() + 2);
        right.relocate(getWidth() - right.prefWidth(-1) - 2, getHeight() - edge() + 2);
    }

    private double gutter() {
        return 5.5 * top.getFont().getSize();
    }

    private List<Node> drawn(Fitted fitted) {
        List<AttenuationPoint> curve = fitted.curve();
        List<AttenuationPoint> sheet = fitted.section().sheet().attenuation();
        double fromHertz = curve.get(0).frequencyHertz();
        double toHertz = curve.get(curve.size() - 1).frequencyHertz();
        double[] levels = Stream.concat(curve.stream(), sheet.stream())
                .mapToDouble(AttenuationPoint::decibelPerMetre)
                .sorted()
                .toArray();
        double least = levels[0] / 1.1;
        double most = levels[levels.length - 1] * 1.1;
        top.setText(texts.say("sheet.axis", Quantities.significant(HUNDRED_METRES * most)));
        bottom.setText(Quantities.significant(HUNDRED_METRES * least));
        left.setText(Quantities.significant(fromHertz / 1e6));
        right.setText(Quantities.significant(toHertz / 1e6) + "\u00a0MHz");
        Axis across = Axis.logarithmic("Hz", fromHertz, toHertz);
        Axis up = Axis.logarithmic("dB/m", least, most);
        Polyline line = new Polyline();
        line.getStyleClass().add("fit-line");
        for (AttenuationPoint point : curve) {
            line.getPoints().addAll(x(point, across), y(point, up));
        }
        List<Node> nodes = new ArrayList<>(List.of(axis(true), axis(false), line));
        for (AttenuationPoint point : sheet) {
            Circle ring = new Circle(x(point, across), y(point, up), RING);
            ring.getStyleClass().add("sheet-ring");
            nodes.add(ring);
        }
        nodes.addAll(List.of(top, bottom, left, right));
        return nodes;
    }

    private Line axis(boolean upright) {
        double floor = getHeight() - edge();
        Line axis = upright ? new Line(gutter(), 0, gutter(), floor) : new Line(gutter(), floor, getWidth(), floor);
        axis.getStyleClass().add("fit-axis");
        return axis;
    }

    private double x(AttenuationPoint point, Axis across) {
        return gutter() + across.share(point.frequencyHertz()) * (getWidth() - gutter() - RING);
    }

    private double y(AttenuationPoint point, Axis up) {
        return (1 - up.share(point.decibelPerMetre())) * (getHeight() - edge());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.classbook.ClassSummary.PlaceError;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Distance errors, a row for each kind: left is nearer than the event, right is farther. */
final class ErrorScatter extends Region {

    private static final double LEAST_REACH_METRES = 0.5;
    private static final double KEPT_SHARE = 0.95;
    private static final double ROW_LETTERS = 1.75;
    private static final double SPREAD = 0.5;

    private final Texts texts;
    private final Canvas canvas = new Canvas();
    private final Label ink = new Label();
    private final Label faint = new Label();
    private final Label dot = new Label();
    private Words words;
    private List<PlaceError> errors = List.of();
    private List<EventKind> kinds = List.of();

    ErrorScatter(Texts texts, Words words) {
        this.texts = texts;
        this.words = words;
        setId("place-errors");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(texts.say("classbook.errors"));
        faint.getStyleClass().add("quiet");
        dot.getStyleClass().add("scatter-dot");
        getChildren().add(canvas);
        // Labels that are never seen: they bring the colours and the letters of the style sheet.
        for (Label label : List.of(ink, faint, dot)) {
            label.setVisible(false);
            label.setManaged(false);
            label.textFillProperty().addListener(changed -> requestLayout());
            label.fontProperty().addListener(changed -> requestLayout());
            getChildren().add(label);
        }
        canvas.setManaged(false);
    }

    void show(ClassSummary summary, Words inUnit) {
        words = inUnit;
        errors = summary.placeErrorsMetres();
        Set<EventKind> met = EnumSet.noneOf(EventKind.class);
        errors.forEach(error -> met.add(error.kind()));
        kinds = new ArrayList<>(met);
        setAccessibleText(errors.isEmpty() ? texts.say("classbook.nothingYet") : spoken());
        requestLayout();
    }

    private String spoken() {
        double mean = errors.stream()
                .mapToDouble(error -> Math.abs(error.errorMetres()))
                .average()
                .orElse(0);
        return texts.say(
                "classbook.errors.spoken", errors.size(), words.quantities().length(mean, 2));
    }

    double letter() {
        return ink.getFont().getSize();
    }

    /** So wide that all but the wildest twentieth are shown; those stand at the edge. */
    private double reachMetres() {
        double[] sizes = errors.stream()
                .mapToDouble(error -> Math.abs(error.errorMetres()))
                .sorted()
                .toArray();
        double most = sizes.length == 0 ? 0 : sizes[(int) Math.floor(KEPT_SHARE * (sizes.length - 1))];
        return Math.max(LEAST_REACH_METRES, 1.15 * most);
    }

    @Override
    protected double computePrefHeight(double width) {
        return (Math.max(2, kinds.size()) * ROW_LETTERS + 2.6) * letter();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, getWidth(), getHeight());
        if (getWidth() < 100) {
            return;
        }
        g.setFont(Font.font(ink.getFont().getFamily(), 0.9 * letter()));
        g.setTextBaseline(VPos.CENTER);
        if (errors.isEmpty()) {
            g.setFill(faint.getTextFill());
            g.setTextAlign(TextAlignment.LEFT);
            g.fillText(texts.say("classbook.nothingYet"), 0, letter());
            return;
        }
        draw(g);
    }

    private void draw(GraphicsContext g) {
        double left = 9.5 * letter();
        double width = getWidth() - left - letter();
        double bottom = kinds.size() * ROW_LETTERS * letter();
        double reach = reachMetres();
        LengthUnit unit = words.quantities().unit();
        Ticks ticks = Ticks.between(-unit.fromMetres(reach), unit.fromMetres(reach), 9);
        for (double tick : ticks.values()) {
            double x = left + width * (tick / unit.fromMetres(reach) + 1) / 2;
            boolean zero = Math.abs(tick) < ticks.step() / 2;
            g.setStroke(fade(faint.getTextFill(), zero ? 0.9 : 0.25));
            g.strokeLine(Math.round(x) + 0.5, 0, Math.round(x) + 0.5, bottom);
            g.setFill(faint.getTextFill());
            g.setTextAlign(TextAlignment.CENTER);
            String sign = tick > ticks.step() / 2 ? "+" : "";
            g.fillText(
                    sign + Quantities.number(zero ? 0 : tick, ticks.digits()) + " " + unit.symbol(),
                    x,
                    bottom + 0.9 * letter());
        }
        int[] drawn = new int[kinds.size()];
        for (PlaceError error : errors) {
            int row = kinds.indexOf(error.kind());
            double share = Math.max(-1, Math.min(1, error.errorMetres() / reach));
            double up = SPREAD * ((drawn[row]++ * 0.382) % 1 - 0.5);
            double y = (row + 0.5 + up) * ROW_LETTERS * letter();
            double x = left + width * (share + 1) / 2;
            double r = 0.26 * letter();
            g.setFill(fade(dot.getTextFill(), 0.65));
            g.fillOval(x - r, y - r, 2 * r, 2 * r);
        }
        g.setFill(ink.getTextFill());
        g.setTextAlign(TextAlignment.RIGHT);
        for (int row = 0; row < kinds.size(); row++) {
            g.fillText(words.kind(kinds.get(row)), left - letter(), (row + 0.5) * ROW_LETTERS * letter());
        }
    }

    private static Paint fade(Paint paint, double share) {
        return paint instanceof Color c ? c.deriveColor(0, 1, 1, share) : paint;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.classbook.ClassSummary.PlaceError;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.drawing.screen.DrawingSurface;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import javafx.scene.AccessibleRole;

/** Distance errors, a row for each kind: left is nearer than the event, right is farther. */
final class ErrorScatter extends DrawingSurface {

    private static final double LEAST_REACH_METRES = 0.5;
    private static final double KEPT_SHARE = 0.95;
    private static final double ROW_LETTERS = 1.75;
    private static final double SPREAD = 0.5;
    private static final double LETTERS = 0.9;
    private static final double LEAST_WIDTH = 100;

    private final Texts texts;
    private Words words;
    private List<PlaceError> errors = List.of();
    private List<EventKind> kinds = List.of();

    ErrorScatter(Texts texts, Words words) {
        this.texts = texts;
        this.words = words;
        setId("place-errors");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(texts.say("classbook.errors"));
    }

    void show(ClassSummary summary, Words told) {
        words = told;
        errors = summary.placeErrorsMetres();
        Set<EventKind> met = EnumSet.noneOf(EventKind.class);
        errors.forEach(error -> met.add(error.kind()));
        kinds = new ArrayList<>(met);
        setAccessibleText(errors.isEmpty() ? texts.say("classbook.nothingYet") : spoken());
        requestRedraw();
        requestParentLayout();
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
        return fontSize();
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
    protected void draw(Pen pen) {
        if (getWidth() < LEAST_WIDTH) {
            return;
        }
        double size = LETTERS * letter();
        if (errors.isEmpty()) {
            String nothing = texts.say("classbook.nothingYet");
            pen.text(nothing, 0, 1.3 * letter(), Anchor.START, size, palette().of(Ink.FAINT));
            return;
        }
        double left = 9.5 * letter();
        double width = getWidth() - left - letter();
        double bottom = kinds.size() * ROW_LETTERS * letter();
        drawAxis(pen, left, width, bottom);
        drawDots(pen, left, width);
        for (int row = 0; row < kinds.size(); row++) {
            double baseline = (row + 0.5) * ROW_LETTERS * letter() + 0.35 * size;
            String name = words.kind(kinds.get(row));
            pen.text(
                    name, left - letter(), baseline, Anchor.END, size, palette().of(Ink.TEXT));
        }
    }

    private void drawAxis(Pen pen, double left, double width, double bottom) {
        LengthUnit unit = words.quantities().unit();
        double reach = unit.fromMetres(reachMetres());
        double size = LETTERS * letter();
        Ticks ticks = Ticks.between(-reach, reach, 9);
        for (double tick : ticks.values()) {
            double x = left + width * (tick / reach + 1) / 2;
            boolean zero = Math.abs(tick) < ticks.step() / 2;
            double sharp = pen.sharp(x);
            pen.line(sharp, 0, sharp, bottom, 1, 0, palette().of(zero ? Ink.AXIS : Ink.GRID));
            String sign = tick > 0 && !zero ? "+" : "";
            String text = sign + Quantities.number(zero ? 0 : tick, ticks.digits()) + " " + unit.symbol();
            double held = Math.min(x, getWidth() - pen.width(text, size) / 2);
            pen.text(
                    text,
                    held,
                    bottom + 1.2 * letter(),
                    Anchor.MIDDLE,
                    size,
                    palette().of(Ink.FAINT));
        }
    }

    private void drawDots(Pen pen, double left, double width) {
        double reach = reachMetres();
        int[] drawn = new int[kinds.size()];
        for (PlaceError error : errors) {
            int row = kinds.indexOf(error.kind());
            double share = Math.max(-1, Math.min(1, error.errorMetres() / reach));
            double up = SPREAD * ((drawn[row]++ * 0.382) % 1 - 0.5);
            double x = left + width * (share + 1) / 2;
            double y = (row + 0.5 + up) * ROW_LETTERS * letter();
            pen.disc(x, y, 0.26 * letter(), palette().of(Ink.TRACE).faded(0.65));
        }
    }
}

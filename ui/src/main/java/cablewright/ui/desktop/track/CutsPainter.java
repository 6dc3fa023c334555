// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.EventWords;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/** Draws cuts across the cable in a row beneath it, each joined to its place by a thin line, with its numbers beside it. */
final class CutsPainter {

    private static final double RADIUS = 17;

    private final CableTrack track;
    private final Texts texts;

    CutsPainter(CableTrack track, Texts texts) {
        this.track = track;
        this.texts = texts;
    }

    private record Placed(CableDrawing.Cut cut, double anchor, double left, double width, List<String> lines) {}

    void draw(GraphicsContext g, CableDrawing drawing, double y) {
        for (Placed placed : place(drawing)) {
            drawOne(g, placed, y);
        }
    }

    /** Pushes the cuts apart from left to right, then back from the right edge; those without room are left out. */
    private List<Placed> place(CableDrawing drawing) {
        double s = track.scale();
        double right = track.getWidth() - 6 * s;
        double next = track.gutter() - 20 * s;
        List<Placed> placed = new ArrayList<>();
        for (CableDrawing.Cut cut : drawing.cuts()) {
            double anchor = anchor(cut, drawing);
            if (Double.isNaN(anchor)) {
                continue;
            }
            List<String> lines = lines(cut);
            double text = lines.stream()
                    .mapToDouble(line -> TextSize.width(line, track.smallFont()))
                    .max()
                    .orElse(0);
            double width = (2 * RADIUS + 8) * s + text;
            double left = Math.max(next, anchor - RADIUS * s);
            placed.add(new Placed(cut, anchor, left, width, lines));
            next = left + width + 14 * s;
        }
        double limit = right;
        for (int i = placed.size() - 1; i >= 0; i--) {
            Placed one = placed.get(i);
            double left = Math.min(one.left(), limit - one.width());
            placed.set(i, new Placed(one.cut(), one.anchor(), left, one.width(), one.lines()));
            limit = left - 14 * s;
        }
        placed.removeIf(one -> one.left() < 4 * s);
        return placed;
    }

    /** Where the leader line meets the cable; a cut out of view is not shown. */
    private double anchor(CableDrawing.Cut cut, CableDrawing drawing) {
        double low = track.gutter();
        double high = track.getWidth() - track.rightMargin();
        double x = track.view().pixel(cut.shownMetres());
        if (cut.event().isPresent()) {
            return drawing.marks().stream()
                    .filter(mark -> mark.event().id().equals(cut.event().get().id()))
                    .filter(mark -> track.view().pixel(mark.shownToMetres()) >= low
                            && track.view().pixel(mark.shownFromMetres()) <= high)
                    .mapToDouble(mark -> Math.max(low, Math.min(high, x)))
                    .findFirst()
                    .orElse(Double.NaN);
        }
        return x >= low && x <= high ? x : Double.NaN;
    }

    private List<String> lines(CableDrawing.Cut cut) {
        String ohms = track.words().quantities().ohms(cut.section().impedanceOhms());
        String velocity = cablewright.ui.words.Quantities.number(cut.section().velocityFraction(), 2);
        String numbers = texts.say("cut.numbers", ohms, velocity);
        if (cut.event().isEmpty()) {
            return List.of(texts.say("cut.asMade"), numbers);
        }
        LineCondition condition = cut.event().get();
        String detail = new EventWords(track.words()).detail(condition);
        int colon = detail.indexOf(": ");
        return colon < 0
                ? List.of(detail, numbers)
                : List.of(detail.substring(0, colon), detail.substring(colon + 2), numbers);
    }

    private void drawOne(GraphicsContext g, Placed placed, double y) {
        double s = track.scale();
        double x = placed.left() + RADIUS * s;
        g.setStroke(track.ink(Ink.AXIS));
        g.setLineWidth(1);
        g.strokeLine(placed.anchor(), 110 * s, x, y - RADIUS * s);
        new SectionPainter(track).draw(g, placed.cut().section(), x, y, RADIUS * s);
        g.setFont(track.smallFont());
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.CENTER);
        double line = 13 * s;
        double first = y - line * (placed.lines().size() - 1) / 2;
        for (int i = 0; i < placed.lines().size(); i++) {
            g.setFill(track.ink(i == placed.lines().size() - 1 ? Ink.FAINT : Ink.TEXT));
            g.fillText(placed.lines().get(i), x + (RADIUS + 8) * s, first + i * line);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.cable.Event;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.ui.drawing.axis.LabelRows;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Outline;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.words.Words;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Draws a cable to scale: its impedance, its body, its events with their names, its end, and cuts across it. */
public final class CablePainter {

    /** Height of a cable with cuts across it, at usual size. */
    public static final double HEIGHT = 200;

    /** Height of a cable with a lane for the wave and cuts across it. */
    public static final double HEIGHT_WITH_LANE = 240;

    /** Least height of a cable with its lane: the body, one row of names and the lane are left. */
    public static final double LEAST_HEIGHT = 84;

    private static final double ROW = 14;
    private static final double DOT = 9;
    private static final double LEAST_LINE = 120;

    private final TrackSheet sheet;
    private final Words words;
    private final CableRows rows;
    private final Body body;
    private final double s;

    /**
     * Prepares to draw.
     *
     * @param sheet where
     * @param words the words, in the unit of length in which it is read
     */
    public CablePainter(TrackSheet sheet, Words words) {
        this(sheet, words, false);
    }

    /**
     * Prepares to draw.
     *
     * @param sheet where
     * @param words the words, in the unit of length in which it is read
     * @param hasLane whether room is left for the wave
     */
    public CablePainter(TrackSheet sheet, Words words, boolean hasLane) {
        this.sheet = sheet;
        this.words = words;
        this.s = sheet.scale();
        this.rows = CableRows.in(sheet, hasLane);
        this.body = rows.body();
    }

    /**
     * Returns where the wave is drawn.
     *
     * @return the lane; of no height where there is none
     */
    public Box lane() {
        return rows.lane();
    }

    /**
     * What is said of events.
     *
     * @param name what an event is called; empty for nothing
     * @param visibility how it shows, where that is known
     * @param selected names of events that are selected
     */
    public record Labels(
            Function<Event, String> name, Function<Event, Optional<Visibility>> visibility, Set<String> selected) {

        /**
         * Names alone.
         *
         * @param name what an event is called
         * @return labels without marks
         */
        public static Labels of(Function<Event, String> name) {
            return new Labels(name, event -> Optional.empty(), Set.of());
        }
    }

    /** Draws the distances of the strip alone. */
    public void drawGrid() {
        sheet.drawDistanceGrid(sheet.top(), sheet.bottom());
    }

    /**
     * Draws a cable.
     *
     * @param drawing the cable
     * @param labels what is said of its events
     * @param caption what stands beside it
     */
    public void draw(CableDrawing drawing, Labels labels, String caption) {
        drawGrid();
        if (rows.hasLane()) {
            Box lane = rows.lane();
            double middle = lane.y() + lane.height() / 2;
            sheet.line(lane.x(), middle, lane.right(), middle, 1, Ink.GRID);
            String wave = words.texts().sibling(TrackSheet.BUNDLE).say("cable.wave");
            sheet.write(wave, sheet.left() - 9 * s, middle, Anchor.END, Ink.FAINT);
        }
        if (rows.hasImpedance()) {
            new ImpedancePainter(sheet, drawing, rows.impedanceTop(), rows.impedanceBottom()).draw();
        }
        new CableBodyPainter(sheet, body).draw(drawing);
        Box shown = new Box(
                sheet.left() - 12 * s,
                sheet.top(),
                sheet.view().widthPixels() + 24 * s,
                sheet.area().height());
        sheet.pen().within(shown, () -> {
            new EndSymbol(sheet, body).draw(drawing, words);
            drawing.marks().forEach(this::drawSymbol);
            drawing.marks().stream()
                    .filter(mark -> labels.selected().contains(mark.event().id()))
                    .forEach(this::drawSelected);
        });
        if (rows.cuts()) {
            new CutsPainter(sheet, drawing, body, words).draw(sheet.bottom() - 24 * s);
        }
        drawNames(drawing, labels);
        sheet.write(caption, sheet.left() - 9 * s, body.middle(), Anchor.END, Ink.FAINT);
    }

    private void drawSymbol(CableDrawing.Mark mark) {
        double from = sheet.pixel(mark.shownFromMetres());
        EventSymbols.draw(sheet, mark.event(), from, sheet.pixel(mark.shownToMetres()), body);
    }

    /** A frame around what is selected, wide enough to be seen around a thing at one place. */
    private void drawSelected(CableDrawing.Mark mark) {
        double from = sheet.pixel(mark.shownFromMetres()) - 12 * s;
        double to = sheet.pixel(mark.shownToMetres()) + 12 * s;
        Box frame = new Box(from, body.top() - 11 * s, to - from, body.height() + 22 * s);
        sheet.pen().draw(Outline.roundBox(frame, 4.5 * s), 1.8 * s, 0, sheet.ink(Ink.TRACE));
    }

    private void drawNames(CableDrawing drawing, Labels labels) {
        LabelRows labelRows =
                new LabelRows(sheet.left() - 20 * s, sheet.area().right() - 8 * s, 8 * s, rows.nameRows());
        for (CableDrawing.Mark mark : drawing.marks()) {
            double from = Math.max(sheet.left(), sheet.pixel(mark.shownFromMetres()));
            double to = Math.min(sheet.right(), sheet.pixel(mark.shownToMetres()));
            if (to >= from - 1) {
                drawName(mark.event(), (from + to) / 2, labels, labelRows);
            }
        }
    }

    private void drawName(Event event, double x, Labels labels, LabelRows labelRows) {
        String name = labels.name().apply(event);
        Optional<Visibility> visibility = labels.visibility().apply(event);
        double room = visibility.isPresent() ? (DOT + 4) * s : 0;
        double width = sheet.smallWidth(name) + room;
        labelRows.next(x, width).ifPresent(place -> {
            double middle = body.bottom() + (rows.nameRows() == 1 ? 16 : 20) * s + ROW * place.row() * s;
            // On paper of its own, over the lines that lead to cuts.
            double high = sheet.small();
            sheet.pen().fill(place.leftPixels() - s, middle - high / 2, width + 2 * s, high, sheet.ink(Ink.PAPER));
            visibility.ifPresent(seen -> drawDot(seen, place.leftPixels() + DOT * s / 2, middle));
            sheet.write(name, place.leftPixels() + room, middle, Anchor.START, Ink.TEXT);
        });
    }

    /** Full, half and empty: how an event shows. */
    private void drawDot(Visibility visibility, double x, double y) {
        double r = 3.6 * s;
        Ink ink =
                switch (visibility) {
                    case CLEAR -> Ink.CLEAR;
                    case MARGINAL -> Ink.MARGINAL;
                    case HIDDEN -> Ink.HIDDEN;
                };
        if (visibility == Visibility.CLEAR) {
            sheet.pen().disc(x, y, r, sheet.ink(ink));
        } else if (visibility == Visibility.MARGINAL) {
            sheet.pen().fill(Outline.cutDisc(x, y, r, r), sheet.ink(ink));
        }
        sheet.pen().ring(x, y, r, 1.5 * s, sheet.ink(ink));
    }

    /**
     * Draws what the marks of visibility mean.
     *
     * @param name what a grade is called
     * @param remark what stands behind them, where there is room
     * @param right how far there is room
     */
    public void drawLegend(Function<Visibility, String> name, String remark, double right) {
        double x = sheet.left() + 4 * s;
        double y = sheet.top() + 11 * s;
        for (Visibility visibility : Visibility.values()) {
            String text = name.apply(visibility);
            if (x + 24 * s + sheet.smallWidth(text) > right) {
                return;
            }
            drawDot(visibility, x + 4 * s, y);
            sheet.write(text, x + 13 * s, y, Anchor.START, Ink.FAINT);
            x += 24 * s + sheet.smallWidth(text);
        }
        if (x + sheet.smallWidth(remark) < right) {
            sheet.write(remark, x, y, Anchor.START, Ink.FAINT);
        }
    }

    /**
     * Writes a line over the legend's place.
     *
     * @param line what
     * @param right how far there is room
     */
    public void drawLine(String line, double right) {
        double left = sheet.left();
        sheet.pen().fill(left - 16 * s, sheet.top() + 2 * s, right - left + 16 * s, 18 * s, sheet.ink(Ink.PAPER));
        if (right - left < LEAST_LINE * s) {
            return;
        }
        String cut = sheet.pen().cut(line, sheet.small(), right - left);
        sheet.write(cut, left, sheet.top() + 11 * s, Anchor.START, Ink.TEXT);
    }

    /**
     * Writes a remark in the middle of the strip, in place of a cable.
     *
     * @param remark what
     */
    public void drawRemark(String remark) {
        double middle = sheet.top() + sheet.area().height() / 2;
        sheet.write(remark, (sheet.left() + sheet.right()) / 2, middle, Anchor.MIDDLE, Ink.FAINT);
    }
}

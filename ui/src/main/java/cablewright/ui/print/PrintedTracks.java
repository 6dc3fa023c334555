// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.exercise.AsBuiltRecord;
import cablewright.lessons.exercise.RecordedItem;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.axis.LabelRows;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.axis.TraceLine;
import cablewright.ui.drawing.pen.GlyphFont;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The tracks on paper, one distance axis for all: trace with a fine grid to read by, record, and perhaps the cable. */
final class PrintedTracks {

    static final double TRACE_HEIGHT = 236;
    static final double RECORD_HEIGHT = 56;
    static final double CABLE_HEIGHT = 84;

    private static final double GUTTER = 44;
    private static final double SIZE = 8;
    private static final int FINE = 0xF0EFEB;
    private static final int GRID = 0xD9D7D0;
    // The palette of Okabe & Ito, Color Universal Design (2008): blue, vermilion, yellow, sky blue.
    private static final int TRACE = 0x0072B2;
    private static final int DAMAGE = 0xD55E00;
    private static final int HARDWARE = 0xF0E442;
    private static final int METAL = 0x5B6470;
    private static final int PLASTIC = 0xEEE6D6;
    private static final int COPPER = 0xB8743A;

    private final PageFlow flow;
    private final Words words;
    private final GlyphFont font = new GlyphFont();
    private final DistanceView view;

    PrintedTracks(PageFlow flow, Words words, double rangeMetres) {
        this.flow = flow;
        this.words = words;
        Extent extent = Extent.ofRange(rangeMetres);
        this.view =
                new DistanceView(extent.fromMetres(), extent.toMetres(), flow.left() + GUTTER, flow.width() - GUTTER);
    }

    private LengthUnit unit() {
        return words.quantities().unit();
    }

    /** A numbered mark on the trace. */
    record Mark(String letter, double metres, boolean damage) {}

    void trace(Trace trace, List<Mark> marks, String caption) {
        flow.block(TRACE_HEIGHT, (pen, top) -> {
            double plotTop = top + 12;
            double plotBottom = top + TRACE_HEIGHT - 18;
            grid(pen, plotTop, plotBottom, true);
            PercentScale scale = PercentScale.ofClipLevel(trace.clipVolts(), plotTop, plotBottom - plotTop);
            percentGrid(pen, scale);
            marks.forEach(mark -> mark(pen, mark, plotTop, plotBottom));
            TraceLine line = TraceLine.of(trace, view);
            double[] ys = line.copyOfY(scale);
            for (int i = 0; i < ys.length; i++) {
                ys[i] = Math.max(plotTop, Math.min(plotBottom, ys[i]));
            }
            pen.line(line.copyOfX(), ys, 0.9, 0, TRACE);
            pen.text(caption, flow.right(), top + 8, Anchor.END, SIZE, PageFlow.QUIET);
        });
    }

    private Ticks ticks(int most) {
        return Ticks.between(unit().fromMetres(view.fromMetres()), unit().fromMetres(view.toMetres()), most);
    }

    private void grid(Pen pen, double top, double bottom, boolean labelled) {
        Ticks coarse = ticks(10);
        for (double fine : ticks(50).values()) {
            double x = view.pixel(unit().toMetres(fine));
            pen.line(x, top, x, bottom, 0.4, 0, FINE);
        }
        for (double shown : coarse.values()) {
            double x = view.pixel(unit().toMetres(shown));
            pen.line(x, top, x, bottom, 0.6, 0, GRID);
            if (labelled) {
                String text = words.quantities().length(unit().toMetres(shown), coarse.digits());
                double middle = Math.min(x, flow.right() - font.width(text, SIZE) / 2);
                pen.text(text, middle, bottom + 11, Anchor.MIDDLE, SIZE, PageFlow.QUIET);
            }
        }
    }

    private void percentGrid(Pen pen, PercentScale scale) {
        double half = 100 * scale.halfSpanShare();
        for (double fine : Ticks.between(-half, half, 40).values()) {
            pen.line(
                    view.leftPixels(),
                    scale.pixel(fine / 100),
                    view.rightPixels(),
                    scale.pixel(fine / 100),
                    0.4,
                    0,
                    FINE);
        }
        Ticks ticks = Ticks.between(-half, half, 8);
        for (double percent : ticks.values()) {
            double y = scale.pixel(percent / 100);
            boolean zero = Math.abs(percent) < ticks.step() / 2;
            pen.line(view.leftPixels(), y, view.rightPixels(), y, zero ? 0.9 : 0.6, 0, zero ? PageFlow.EDGE : GRID);
            String text = (percent > 0 && !zero ? "+" : "") + Quantities.number(percent, ticks.digits()) + " %";
            pen.text(text, view.leftPixels() - 5, y + 3, Anchor.END, SIZE, PageFlow.QUIET);
        }
    }

    private void mark(Pen pen, Mark mark, double top, double bottom) {
        double x = view.pixel(mark.metres());
        if (x < view.leftPixels() || x > view.rightPixels()) {
            return;
        }
        pen.line(x, top, x, bottom, 0.8, mark.damage() ? 0 : 3, mark.damage() ? DAMAGE : METAL);
        double width = font.width(mark.letter(), SIZE) + 7;
        pen.fill(x, top, width, 11, mark.damage() ? DAMAGE : METAL);
        pen.text(mark.letter(), x + width / 2, top + 8.5, Anchor.MIDDLE, SIZE, 0xFFFFFF);
    }

    private record Claim(double metres, String text, boolean isEnd) {}

    void record(AsBuiltRecord record, LineEnd end, String caption) {
        flow.block(RECORD_HEIGHT, (pen, top) -> {
            grid(pen, top, top + RECORD_HEIGHT - 6, false);
            double y = top + 16;
            List<Claim> claims = claims(record, end);
            double far = record.lengthMetres().orElse(view.toMetres());
            pen.line(view.pixel(0), y, Math.min(view.rightPixels(), view.pixel(far)), y, 1.1, 4, METAL);
            LabelRows rows = new LabelRows(view.leftPixels() - 10, view.rightPixels(), 6, 3);
            for (Claim claim : claims) {
                double x = view.pixel(claim.metres());
                if (x >= view.leftPixels() && x <= view.rightPixels()) {
                    hollow(pen, x, y, claim.isEnd());
                    label(pen, rows, x, y + 14, claim.text());
                }
            }
            pen.text(caption, view.leftPixels() - 5, y + 3, Anchor.END, SIZE, PageFlow.QUIET);
        });
    }

    private List<Claim> claims(AsBuiltRecord record, LineEnd end) {
        boolean turned = end == LineEnd.FAR && record.lengthMetres().isPresent();
        List<Claim> claims = new ArrayList<>();
        for (RecordedItem item : record.items()) {
            double metres =
                    turned ? record.lengthMetres().getAsDouble() - item.positionMetres() : item.positionMetres();
            claims.add(new Claim(metres, item.label(), false));
        }
        String endLabel = turned ? words.end(LineEnd.NEAR) : words.recordedEnd(record.farEnd());
        record.lengthMetres().ifPresent(length -> claims.add(new Claim(length, endLabel, true)));
        claims.sort(Comparator.comparingDouble(Claim::metres));
        return claims;
    }

    private void hollow(Pen pen, double x, double y, boolean square) {
        double r = 3.4;
        int corners = square ? 4 : 16;
        double[] xs = new double[corners + 1];
        double[] ys = new double[corners + 1];
        for (int i = 0; i <= corners; i++) {
            double angle = Math.PI / 4 + 2 * Math.PI * i / corners;
            xs[i] = x + r * Math.cos(angle);
            ys[i] = y + r * Math.sin(angle);
        }
        pen.shape(xs, ys, 0xFFFFFF);
        pen.line(xs, ys, 1.2, 0, METAL);
    }

    private void label(Pen pen, LabelRows rows, double x, double y, String text) {
        String cut = cut(text, 130);
        rows.next(x, font.width(cut, SIZE))
                .ifPresent(place ->
                        pen.text(cut, place.leftPixels(), y + 10.0 * place.row(), Anchor.START, SIZE, PageFlow.INK));
    }

    private String cut(String text, double width) {
        String cut = text;
        while (font.width(cut, SIZE) > width && cut.length() > 2) {
            cut = cut.substring(0, cut.length() - 2) + "…";
        }
        return cut;
    }

    void cable(CableDrawing drawing, List<String> numbers, List<Boolean> damaged, String caption) {
        flow.block(CABLE_HEIGHT, (pen, top) -> {
            grid(pen, top, top + CABLE_HEIGHT - 4, false);
            impedance(pen, drawing, top + 4, top + 28);
            body(pen, drawing, top + 38, top + 54);
            for (int i = 0; i < drawing.marks().size(); i++) {
                event(pen, drawing.marks().get(i), numbers.get(i), damaged.get(i), top + 38, top + 54);
            }
            pen.text(caption, view.leftPixels() - 5, top + 49, Anchor.END, SIZE, PageFlow.QUIET);
        });
    }

    private void impedance(Pen pen, CableDrawing drawing, double top, double bottom) {
        double usual = drawing.usualOhms();
        double swing = drawing.stretches().stream()
                .mapToDouble(stretch -> Math.abs(stretch.section().impedanceOhms() - usual))
                .max()
                .orElse(0);
        double half = Math.max(0.1 * usual, Math.min(swing, usual));
        double middle = (top + bottom) / 2;
        List<Double> xs = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        for (CableDrawing.Stretch stretch : drawing.stretches()) {
            double share = Math.max(-1, Math.min(1, (stretch.section().impedanceOhms() - usual) / half));
            double y = middle - share * (bottom - top) / 2;
            xs.add(within(stretch.shownFromMetres()));
            ys.add(y);
            xs.add(within(stretch.shownToMetres()));
            ys.add(y);
        }
        pen.line(array(xs), array(ys), 1, 0, METAL);
        pen.text(words.quantities().ohms(usual), view.leftPixels() - 5, middle + 3, Anchor.END, SIZE, PageFlow.QUIET);
    }

    private double within(double metres) {
        return Math.max(view.leftPixels(), Math.min(view.rightPixels(), view.pixel(metres)));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void body(Pen pen, CableDrawing drawing, double top, double bottom) {
        double from = within(0);
        double to = within(drawing.endShownMetres());
        pen.fill(from, top, to - from, bottom - top, PLASTIC);
        pen.line(from, top, to, top, 2, 0, METAL);
        pen.line(from, bottom, to, bottom, 2, 0, METAL);
        double middle = (top + bottom) / 2;
        pen.line(from, middle, to, middle, 1.6, 0, COPPER);
        if (to < view.rightPixels() - 1) {
            pen.text(
                    words.farEnd(drawing.farEnd()),
                    Math.min(to + 4, view.rightPixels() - 60),
                    middle + 3,
                    Anchor.START,
                    SIZE,
                    PageFlow.INK);
        }
    }

    private void event(Pen pen, CableDrawing.Mark mark, String number, boolean damage, double top, double bottom) {
        double from = view.pixel(mark.shownFromMetres());
        double to = Math.max(from + 5, view.pixel(mark.shownToMetres()));
        if (from < view.leftPixels() - 1 || from > view.rightPixels()) {
            return;
        }
        double right = Math.min(to, view.rightPixels());
        if (damage) {
            pen.line(
                    new double[] {from, right, right, from, from},
                    new double[] {top - 3, top - 3, bottom + 3, bottom + 3, top - 3},
                    1.2,
                    0,
                    DAMAGE);
        } else {
            pen.fill(from - 2.5, top - 3, right - from, bottom - top + 6, HARDWARE);
            pen.line(
                    new double[] {from - 2.5, right - 2.5, right - 2.5, from - 2.5, from - 2.5},
                    new double[] {top - 3, top - 3, bottom + 3, bottom + 3, top - 3},
                    0.7,
                    0,
                    METAL);
        }
        pen.text(number, (from + right) / 2 - 1, bottom + 14, Anchor.MIDDLE, SIZE, damage ? DAMAGE : PageFlow.INK);
    }
}

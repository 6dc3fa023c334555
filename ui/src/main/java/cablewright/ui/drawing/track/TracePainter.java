// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.instrument.Trace;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.words.Quantities;
import java.util.List;

/** Draws a trace: reflection in percent of the outgoing wave against distance. */
public final class TracePainter {

    /** Height of the band of noise, in its root mean square either way. */
    private static final double NOISE_SIGMAS = 3;

    private static final double LEAST_LOOK = 6;
    private static final double PERCENTS_APART = 34;
    private static final double FINE_PERCENTS = 5;
    private static final double SAMPLE = 22;

    private final TrackSheet sheet;
    private final Box plot;
    private final PercentScale vertical;
    private final double s;

    /**
     * Prepares to draw.
     *
     * @param sheet where
     * @param vertical which heights are shown, on {@link #plotOf the plot} of the sheet's strip
     */
    public TracePainter(TrackSheet sheet, PercentScale vertical) {
        this.sheet = sheet;
        this.vertical = vertical;
        this.s = sheet.scale();
        Box within = plotOf(sheet.area(), s);
        this.plot = new Box(sheet.left(), within.y(), sheet.view().widthPixels(), within.height());
    }

    /**
     * Returns what the axes enclose, from top to bottom.
     *
     * @param strip the track
     * @param scale how much larger than usual everything is drawn
     * @return the strip without the line of words above and the distances below
     */
    public static Box plotOf(Box strip, double scale) {
        return strip.inset(0, 20 * scale, 0, 28 * scale);
    }

    /**
     * A curve on the plot.
     *
     * @param name what it is, for the legend; empty for none
     * @param ink its colour
     * @param dash its dashes at usual size; 0 for none
     */
    public record Look(String name, Ink ink, double dash) {

        /** The trace itself. */
        public static final Look TRACE = new Look("", Ink.TRACE, 0);
    }

    /**
     * Draws the grid and its numbers.
     *
     * @param fine whether finer lines, to read paper by, lie between
     */
    public void drawGrid(boolean fine) {
        if (fine) {
            sheet.drawFineDistanceGrid(plot.y(), plot.bottom());
            for (double percent : percents(FINE_PERCENTS).values()) {
                level(percent, 0.5 * s, Ink.FINE_GRID);
            }
        }
        sheet.drawDistanceGrid(plot.y(), plot.bottom());
        Ticks ticks = percents(1);
        for (double percent : ticks.values()) {
            boolean zero = Math.abs(percent) < ticks.step() / 2;
            level(percent, Math.min(1, s), zero ? Ink.AXIS : Ink.GRID);
            String sign = percent > 0 && !zero ? "+" : "";
            String text = sign + Quantities.number(zero ? 0 : percent, zero ? 0 : ticks.digits()) + " %";
            sheet.write(text, plot.x() - 8 * s, y(percent / 100), Anchor.END, Ink.FAINT);
        }
        drawDistances();
    }

    /** Draws the numbers of the distance axis alone, where there is no trace yet. */
    public void drawDistances() {
        sheet.drawDistanceLabels(plot.bottom() + 13 * s);
    }

    private Ticks percents(double finer) {
        double centre = 100 * vertical.centreShare();
        double half = 100 * vertical.halfSpanShare();
        int most = (int) (finer * Math.max(4, plot.height() / (PERCENTS_APART * s)));
        return Ticks.between(centre - half, centre + half, most);
    }

    private void level(double percent, double thickness, Ink ink) {
        double y = sheet.pen().sharp(y(percent / 100));
        sheet.pen().line(plot.x(), y, plot.right(), y, thickness, 0, sheet.ink(ink));
    }

    private double y(double share) {
        return vertical.pixel(share);
    }

    /**
     * Draws bands behind the trace, each with a bar at its foot that can be recognised without colour.
     *
     * @param stretches where to look
     */
    public void drawLookHere(List<Extent> stretches) {
        sheet.pen().within(plot, () -> {
            for (Extent stretch : stretches) {
                double from = sheet.pixel(stretch.fromMetres());
                double width = Math.max(LEAST_LOOK * s, sheet.pixel(stretch.toMetres()) - from);
                sheet.pen().fill(from, plot.y(), width, plot.height(), sheet.ink(Ink.LOOK_HERE));
                sheet.pen().fill(from, plot.bottom() - 3 * s, width, 3 * s, sheet.ink(Ink.TRACE));
            }
        });
    }

    /**
     * Draws the band in which the noise lies.
     *
     * @param noiseVolts its root mean square, as a share of the outgoing wave
     */
    public void drawNoise(double noiseVolts) {
        double high = Math.max(plot.y(), y(NOISE_SIGMAS * noiseVolts));
        double low = Math.min(plot.bottom(), y(-NOISE_SIGMAS * noiseVolts));
        sheet.pen().fill(plot.x(), high, plot.width(), Math.max(1, low - high), sheet.ink(Ink.NOISE));
    }

    /**
     * Reduces a trace to what shows of it.
     *
     * @param trace the trace
     * @return its points, where the sheet has them
     */
    public ReducedCurve reduce(Trace trace) {
        return ReducedCurve.of(trace, sheet.view(), sheet.columns());
    }

    /**
     * Draws a curve.
     *
     * @param curve its points
     * @param look its colour and dashes
     */
    public void drawCurve(ReducedCurve curve, Look look) {
        drawCurve(curve, look, plot, 1);
    }

    /**
     * Draws a curve of which a part is not there yet.
     *
     * @param curve its points
     * @param look its colour and dashes
     * @param metres distance as far as it is there; what lies beyond is faint
     */
    public void drawWritten(ReducedCurve curve, Look look, double metres) {
        drawCurve(curve, look, plot, 0.25);
        double now = sheet.held(metres);
        if (now > plot.x()) {
            drawCurve(curve, look, new Box(plot.x(), plot.y(), now - plot.x(), plot.height()), 1);
        }
    }

    private void drawCurve(ReducedCurve curve, Look look, Box where, double opacity) {
        if (curve.count() > 1) {
            Colour colour = sheet.ink(look.ink()).faded(opacity);
            sheet.pen().within(where, () -> sheet.pen()
                    .line(curve.xs(), curve.ys(this::y), 1.5 * s, look.dash() * s, colour));
        }
    }

    /**
     * Draws bars where a curve leaves what is shown: where the converter clips, or the plot ends.
     *
     * @param curve the curve
     * @param clipShare level at which the converter clips, as a share of the outgoing wave; infinite for none
     */
    public void drawClipping(ReducedCurve curve, double clipShare) {
        double top = vertical.centreShare() + vertical.halfSpanShare();
        double bottom = vertical.centreShare() - vertical.halfSpanShare();
        double high = Math.min(top, clipShare);
        double low = Math.max(bottom, -clipShare);
        curve.above(high - 1e-9 * Math.abs(high)).forEach(part -> bar(part, high == top ? plot.y() + 2 * s : y(high)));
        curve.below(low + 1e-9 * Math.abs(low))
                .forEach(part -> bar(part, low == bottom ? plot.bottom() - 2 * s : y(low)));
    }

    private void bar(ReducedCurve.Stretch part, double y) {
        sheet.pen().line(part.from(), y, Math.max(part.to(), part.from() + 2 * s), y, 4 * s, 0, sheet.ink(Ink.CLIP));
    }

    /**
     * Names what is drawn, in the upper right corner of the plot; a band of noise has a filled sample.
     *
     * @param looks the curves that have a name, the band of noise by {@link Ink#NOISE}
     */
    public void drawLegend(List<Look> looks) {
        double middle = plot.y() + 10 * s;
        for (Look look : looks) {
            double text = plot.right() - 6 * s - sheet.smallWidth(look.name());
            double x = text - (SAMPLE + 6) * s;
            sheet.pen()
                    .fill(
                            x - 4 * s,
                            middle - 8 * s,
                            plot.right() - x + 2 * s,
                            16 * s,
                            sheet.ink(Ink.PAPER).faded(0.85));
            if (look.ink() == Ink.NOISE) {
                sheet.pen().fill(x, middle - 5 * s, SAMPLE * s, 10 * s, sheet.ink(look.ink()));
            } else {
                sheet.pen().line(x, middle, x + SAMPLE * s, middle, 1.5 * s, look.dash() * s, sheet.ink(look.ink()));
            }
            sheet.write(look.name(), text, middle, Anchor.START, Ink.FAINT);
            middle += 17 * s;
        }
    }

    /**
     * Writes what is shown, if there is room for it beside what stands in its line.
     *
     * @param caption what is shown
     * @param left how far the line is taken
     */
    public void drawCaption(String caption, double left) {
        if (left + sheet.smallWidth(caption) <= sheet.right() - 12 * s) {
            sheet.write(caption, sheet.right() - 4 * s, sheet.top() + 10 * s, Anchor.END, Ink.FAINT);
        }
    }

    /**
     * Draws cursors over the plot, and a bead where the first meets the trace.
     *
     * @param metres where the first stands
     * @param share how high the trace is there
     */
    public void drawBead(double metres, double share) {
        double x = sheet.pixel(metres);
        if (sheet.isShown(x)) {
            double at = sheet.pen().sharp(x);
            double y = Math.max(plot.y(), Math.min(plot.bottom(), y(share)));
            sheet.pen().disc(at, y, 5 * s, sheet.ink(Ink.TRACE));
            sheet.pen().disc(at, y, 3 * s, sheet.ink(Ink.PAPER));
        }
    }
}

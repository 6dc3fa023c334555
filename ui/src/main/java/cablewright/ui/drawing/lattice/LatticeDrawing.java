// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.lattice;

import cablewright.ui.drawing.axis.LabelRows;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.words.Quantities;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Draws a lattice diagram: distance across, time downward, the stronger the wave the thicker its line, ghosts dashed. What
 * returns is labelled at the left, where it meets the port.
 */
public final class LatticeDrawing {

    private static final double DECADES = 3.5;
    private static final double MICROSECONDS_FROM = 2e-6;

    private final Pen pen;
    private final Palette palette;
    private final double font;
    private final Lattice lattice;
    private final LatticeLayout layout;

    /**
     * Prepares to draw.
     *
     * @param pen what to draw with
     * @param palette its colours
     * @param font size of its letters, in the pen's units
     * @param lattice the diagram
     * @param sheet where
     */
    public LatticeDrawing(Pen pen, Palette palette, double font, Lattice lattice, Box sheet) {
        this.pen = pen;
        this.palette = palette;
        this.font = font;
        this.lattice = lattice;
        this.layout = new LatticeLayout(lattice, sheet, font);
    }

    /**
     * Draws.
     *
     * @param chosen echoes whose ways stand out, by their places in the list; none for all alike
     */
    public void draw(Set<Integer> chosen) {
        drawStrips();
        drawTimes();
        drawPlaces();
        for (boolean front : new boolean[] {false, true}) {
            for (Lattice.Ray ray : lattice.rays()) {
                boolean stands = chosen.isEmpty() || ray.echoes().stream().anyMatch(chosen::contains);
                if (stands == front) {
                    drawRay(ray, stands, !chosen.isEmpty());
                }
            }
        }
        drawJoints(chosen);
        drawEchoes(chosen);
    }

    /**
     * Marks a moment across all strips.
     *
     * @param seconds time since the wave began to leave [s]
     */
    public void drawMoment(double seconds) {
        if (seconds <= lattice.lastSeconds()) {
            double y = layout.y(seconds);
            Box plot = layout.plot();
            pen.line(plot.x(), y, plot.right(), y, line(1.2), 0, palette.of(Ink.TRACE));
        }
    }

    private double line(double points) {
        return points * font / 10;
    }

    private void drawStrips() {
        double bottom = layout.plot().bottom();
        for (int i = 0; i < lattice.strips().size(); i++) {
            Box box = layout.strip(i);
            Lattice.Strip strip = lattice.strips().get(i);
            if (strip.isBranch()) {
                pen.fill(box.x(), box.y(), box.width(), box.height(), palette.of(Ink.GRID));
            }
            double from = strip.fromMetres() * lattice.unit().perMetre();
            double to = strip.toMetres() * lattice.unit().perMetre();
            if (to > from) {
                Ticks ticks = Ticks.between(from, to, (int) Math.max(2, box.width() / (5 * font)));
                for (double tick : ticks.values()) {
                    double x = layout.x(i, tick / lattice.unit().perMetre());
                    pen.line(x, bottom, x, bottom + 0.4 * font, line(0.8), 0, palette.of(Ink.AXIS));
                    String text = Quantities.number(tick, ticks.digits());
                    pen.text(text, x, bottom + 1.5 * font, Pen.Anchor.MIDDLE, font, palette.of(Ink.FAINT));
                }
            }
            pen.line(box.x(), bottom, box.right(), bottom, line(0.8), 0, palette.of(Ink.AXIS));
        }
        drawNames();
        pen.text(
                lattice.unit().symbol(),
                layout.plot().right() + 2 * font,
                bottom + 1.5 * font,
                Pen.Anchor.START,
                font,
                palette.of(Ink.FAINT));
    }

    private void drawNames() {
        Box plot = layout.plot();
        LabelRows rows = new LabelRows(plot.x(), plot.right(), 0.8 * font, 2);
        for (int i = 0; i < lattice.strips().size(); i++) {
            Lattice.Strip strip = lattice.strips().get(i);
            if (strip.isBranch() && strip.fromMetres() == 0) {
                Box box = layout.strip(i);
                double wide = pen.width(strip.name(), font);
                double y = plot.y() - 3.4 * font;
                rows.next(box.x() + wide / 2, wide)
                        .ifPresent(room -> pen.text(
                                strip.name(),
                                room.leftPixels(),
                                y - 1.3 * room.row() * font,
                                Pen.Anchor.START,
                                font,
                                palette.of(Ink.FAINT)));
            }
        }
    }

    private void drawTimes() {
        boolean micro = lattice.lastSeconds() >= MICROSECONDS_FROM;
        double scale = micro ? 1e6 : 1e9;
        Box plot = layout.plot();
        Ticks ticks = Ticks.between(0, scale * lattice.lastSeconds(), (int) Math.max(2, plot.height() / (2.5 * font)));
        for (double tick : ticks.values()) {
            double y = layout.y(tick / scale);
            pen.line(plot.x(), y, plot.right(), y, line(0.5), 0, palette.of(Ink.GRID));
            String text = Quantities.number(tick, ticks.digits());
            pen.text(text, plot.right() + 0.5 * font, y + 0.35 * font, Pen.Anchor.START, font, palette.of(Ink.FAINT));
        }
        pen.text(
                micro ? "µs" : "ns",
                plot.right() + 1.2 * font,
                plot.y() - 0.9 * font,
                Pen.Anchor.START,
                font,
                palette.of(Ink.FAINT));
    }

    private void drawPlaces() {
        Box plot = layout.plot();
        LabelRows rows = new LabelRows(plot.x(), plot.right(), 0.8 * font, 2);
        List<Lattice.Place> ordered = lattice.places().stream()
                .sorted(Comparator.comparingDouble(place -> layout.x(place.strip(), place.metres())))
                .toList();
        for (Lattice.Place place : ordered) {
            double x = layout.x(place.strip(), place.metres());
            pen.line(x, plot.y(), x, plot.bottom(), line(0.7), line(2.5), palette.of(Ink.AXIS));
            Optional<LabelRows.Place> room = rows.next(x, pen.width(place.name(), font));
            if (room.isPresent()) {
                double y = plot.y() - (0.7 + 1.3 * room.get().row()) * font;
                pen.text(place.name(), room.get().leftPixels(), y, Pen.Anchor.START, font, palette.of(Ink.TEXT));
            }
        }
        pen.line(plot.x(), plot.y(), plot.x(), plot.bottom(), line(1.2), 0, palette.of(Ink.FAINT));
    }

    private Colour colour(Lattice.Ray ray, boolean stands) {
        if (!stands) {
            return palette.of(Ink.AXIS);
        }
        return palette.of(ray.isGhost() ? Tone.OTHER : Tone.MAIN);
    }

    /** From a third of a point to two and a half: a decade of height is the same everywhere. */
    private double thickness(double volts) {
        double share = 1 + Math.log10(Math.max(1e-9, volts)) / DECADES;
        return line(0.35 + 2.2 * Math.max(0, Math.min(1, share)));
    }

    private void drawRay(Lattice.Ray ray, boolean stands, boolean some) {
        double thick = stands && some ? thickness(ray.volts()) + line(0.6) : thickness(ray.volts());
        pen.line(
                layout.x(ray.strip(), ray.fromMetres()),
                layout.y(ray.fromSeconds()),
                layout.x(ray.strip(), ray.toMetres()),
                layout.y(ray.toSeconds()),
                thick,
                ray.isGhost() ? line(4) : 0,
                colour(ray, stands));
    }

    /** Where a way goes on in another strip, or on the far side of a thing that has a length. */
    private void drawJoints(Set<Integer> chosen) {
        for (int echo = 0; echo < lattice.echoes().size(); echo++) {
            if (!chosen.isEmpty() && !chosen.contains(echo)) {
                continue;
            }
            int which = echo;
            List<Lattice.Ray> way = lattice.rays().stream()
                    .filter(ray -> ray.echoes().contains(which))
                    .sorted(Comparator.comparingDouble(Lattice.Ray::fromSeconds))
                    .toList();
            for (int i = 1; i < way.size(); i++) {
                Lattice.Ray before = way.get(i - 1);
                Lattice.Ray after = way.get(i);
                double fromX = layout.x(before.strip(), before.toMetres());
                double toX = layout.x(after.strip(), after.fromMetres());
                if (Math.abs(fromX - toX) > 0.5) {
                    pen.line(
                            fromX,
                            layout.y(before.toSeconds()),
                            toX,
                            layout.y(after.fromSeconds()),
                            line(0.6),
                            line(1.5),
                            colour(after, true));
                }
            }
        }
    }

    private void drawEchoes(Set<Integer> chosen) {
        double x = layout.plot().x();
        double head = layout.plot().y() - 2 * font;
        pen.text(lattice.words().get(1), x - 2 * font, head, Pen.Anchor.END, font, palette.of(Ink.FAINT));
        pen.text(lattice.words().get(0), x - 7.2 * font, head, Pen.Anchor.END, font, palette.of(Ink.FAINT));
        for (LatticeLayout.Label label : layout.labels()) {
            Lattice.Echo echo = lattice.echoes().get(label.echo());
            double y = layout.y(echo.path().arrivalSeconds());
            boolean stands = chosen.isEmpty() || chosen.contains(label.echo());
            Colour colour =
                    !stands ? palette.of(Ink.AXIS) : palette.of(echo.path().isGhost() ? Tone.OTHER : Tone.MAIN);
            double middle = label.y() - 0.1 * font;
            pen.line(
                    new double[] {x, x - 0.8 * font, x - 1.6 * font},
                    new double[] {y, middle, middle},
                    line(0.7),
                    0,
                    colour);
            Colour ink = stands ? palette.of(Ink.TEXT) : palette.of(Ink.FAINT);
            double baseline = label.y() + 0.25 * font;
            pen.text(echo.height(), x - 2 * font, baseline, Pen.Anchor.END, font, ink);
            pen.text(echo.shown(), x - 7.2 * font, baseline, Pen.Anchor.END, font, ink);
        }
    }
}

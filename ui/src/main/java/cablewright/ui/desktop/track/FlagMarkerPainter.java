// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** Draws flags as pennants on staffs and knows which of them lies under the pointer. */
final class FlagMarkerPainter {

    private static final double WIDTH = 23;
    private static final double HEIGHT = 18;
    private static final double REACH = 6;

    private final TraceTrack track;
    private List<Placed> placed = List.of();

    FlagMarkerPainter(TraceTrack track) {
        this.track = track;
    }

    /** One staff: of a flag's place, or of the end of its stretch. */
    record Staff(FlagMarker pennant, boolean second) {
        double metres() {
            return second ? pennant.endMetres().orElseThrow() : pennant.startMetres();
        }
    }

    private record Placed(Staff staff, double x, double y) {}

    void draw(GraphicsContext g, List<FlagMarker> pennants, double top, double bottom) {
        placed = place(pennants, top);
        for (FlagMarker pennant : pennants) {
            pennant.endMetres().ifPresent(end -> drawStretch(g, pennant, end, top, bottom));
        }
        for (Placed one : placed) {
            drawStaff(g, one, bottom);
        }
        for (Placed one : placed) {
            drawCloth(g, one);
        }
    }

    /** Puts pennants that would cover each other on lower rows. */
    private List<Placed> place(List<FlagMarker> pennants, double top) {
        List<Staff> staffs = new ArrayList<>();
        for (FlagMarker pennant : pennants) {
            staffs.add(new Staff(pennant, false));
            pennant.endMetres().ifPresent(end -> staffs.add(new Staff(pennant, true)));
        }
        staffs.sort(Comparator.comparingDouble(Staff::metres));
        List<Double> rowEnds = new ArrayList<>();
        List<Placed> all = new ArrayList<>();
        for (Staff staff : staffs) {
            double x = track.view().pixel(staff.metres());
            int row = 0;
            while (row < rowEnds.size() && rowEnds.get(row) > x) {
                row++;
            }
            if (row == rowEnds.size()) {
                rowEnds.add(0.0);
            }
            rowEnds.set(row, x + (WIDTH + 3) * track.scale());
            all.add(new Placed(staff, x, top + row * (HEIGHT + 3) * track.scale()));
        }
        return all;
    }

    private boolean isOff(double x) {
        return x < track.gutter() - 1 || x > track.getWidth() - track.rightMargin() + 1;
    }

    private Color colour(FlagMarker pennant) {
        switch (pennant.look()) {
            case BELONGS:
                return track.ink(Ink.BELONGS);
            case DAMAGE:
                return track.ink(Ink.DAMAGE);
            default:
                return track.ink(Ink.FAINT);
        }
    }

    private void drawStretch(GraphicsContext g, FlagMarker pennant, double end, double top, double bottom) {
        double from = Math.max(track.gutter(), track.view().pixel(Math.min(pennant.startMetres(), end)));
        double to = Math.min(
                track.getWidth() - track.rightMargin(), track.view().pixel(Math.max(pennant.startMetres(), end)));
        if (to > from) {
            g.setFill(colour(pennant).deriveColor(0, 1, 1, 0.12));
            g.fillRect(from, top, to - from, bottom - top);
        }
    }

    private void drawStaff(GraphicsContext g, Placed one, double bottom) {
        if (isOff(one.x())) {
            return;
        }
        g.setStroke(colour(one.staff().pennant()));
        g.setLineWidth((one.staff().pennant().selected() ? 2.4 : 1.3) * track.scale());
        switch (one.staff().pennant().look()) {
            case BELONGS:
                g.setLineDashes(5 * track.scale(), 4 * track.scale());
                break;
            case UNSAID:
                g.setLineDashes(1.5 * track.scale(), 4 * track.scale());
                break;
            default:
                break;
        }
        g.strokeLine(Track.sharp(one.x()), one.y(), Track.sharp(one.x()), bottom);
        g.setLineDashes();
    }

    private void drawCloth(GraphicsContext g, Placed one) {
        if (isOff(one.x())) {
            return;
        }
        double s = track.scale();
        double x = Track.sharp(one.x());
        double y = one.y();
        double w = WIDTH * s;
        double h = HEIGHT * s;
        double point = 6 * s;
        double[] xs;
        double[] ys;
        switch (one.staff().pennant().look()) {
            case BELONGS:
                xs = new double[] {x, x + w - point, x + w, x + w - point, x};
                ys = new double[] {y, y, y + h / 2, y + h, y + h};
                break;
            case DAMAGE:
                xs = new double[] {x, x + w + point / 2, x + w - point / 2, x + w + point / 2, x};
                ys = new double[] {y, y, y + h / 2, y + h, y + h};
                break;
            default:
                xs = new double[] {x, x + w - point / 2, x + w - point / 2, x};
                ys = new double[] {y, y, y + h, y + h};
                break;
        }
        g.setFill(colour(one.staff().pennant()));
        g.fillPolygon(xs, ys, xs.length);
        if (one.staff().pennant().selected()) {
            g.setStroke(track.ink(Ink.TEXT));
            g.setLineWidth(1.6 * s);
            g.strokePolygon(xs, ys, xs.length);
        }
        g.setFill(track.ink(Ink.ON_PENNANT));
        g.setFont(track.boldFont());
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.CENTER);
        g.fillText(label(one.staff()), x + (w - point) / 2 + s, y + h / 2);
    }

    private static String label(Staff staff) {
        return staff.second() ? staff.pennant().letter() + "′" : staff.pennant().letter();
    }

    /** The staff under the pointer; its cloth wins over a bare staff. */
    Optional<Staff> at(double x, double y) {
        double s = track.scale();
        return placed.stream()
                .filter(one -> x >= one.x() - REACH * s
                        && x <= one.x() + (WIDTH + 3) * s
                        && y >= one.y()
                        && y <= one.y() + HEIGHT * s)
                .reduce((first, second) -> second)
                .or(() -> placed.stream()
                        .filter(one -> Math.abs(x - one.x()) <= REACH * s * 0.7 && y >= one.y())
                        .min(Comparator.comparingDouble(one -> Math.abs(x - one.x()))))
                .map(Placed::staff);
    }

    /** How many pennants a box would cover. */
    long clothsUnder(double x, double y, double width, double height) {
        double w = WIDTH * track.scale();
        double h = HEIGHT * track.scale();
        return placed.stream()
                .filter(one -> one.x() < x + width && one.x() + w > x && one.y() < y + height && one.y() + h > y)
                .count();
    }
}

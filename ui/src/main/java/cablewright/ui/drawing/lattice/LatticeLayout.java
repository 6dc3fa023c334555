// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.lattice;

import cablewright.ui.drawing.pen.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where a lattice diagram's strips and times lie on a sheet. */
public final class LatticeLayout {

    private static final double LEAST_SHARE = 0.07;
    private static final double GAP_FONTS = 1.2;
    private static final double LEFT_FONTS = 13;
    private static final double RIGHT_FONTS = 4.5;
    private static final double TOP_FONTS = 3.4;
    private static final double BRANCH_FONTS = 2.8;
    private static final double BOTTOM_FONTS = 3.2;
    private static final double NEAR_FONTS = 0.8;

    private final Lattice lattice;
    private final Box plot;
    private final double font;
    private final List<Double> left = new ArrayList<>();
    private final List<Double> width = new ArrayList<>();

    /**
     * Lays out a diagram.
     *
     * @param lattice the diagram
     * @param sheet where
     * @param font size of its letters, in the units of the sheet
     */
    public LatticeLayout(Lattice lattice, Box sheet, double font) {
        this.lattice = lattice;
        this.font = font;
        boolean branches = lattice.strips().stream().anyMatch(Lattice.Strip::isBranch);
        double top = (TOP_FONTS + (branches ? BRANCH_FONTS : 0)) * font;
        this.plot = sheet.inset(LEFT_FONTS * font, top, RIGHT_FONTS * font, BOTTOM_FONTS * font);
        double all = lattice.strips().stream()
                .mapToDouble(Lattice.Strip::lengthMetres)
                .sum();
        List<Double> weights = lattice.strips().stream()
                .map(strip -> Math.max(strip.lengthMetres(), LEAST_SHARE * all))
                .toList();
        double sum = weights.stream().mapToDouble(Double::doubleValue).sum();
        double gap = GAP_FONTS * font;
        double room = plot.width() - gap * (weights.size() - 1);
        double x = plot.x();
        for (double weight : weights) {
            left.add(x);
            width.add(room * weight / sum);
            x += room * weight / sum + gap;
        }
    }

    Box plot() {
        return plot;
    }

    Box strip(int index) {
        return new Box(left.get(index), plot.y(), width.get(index), plot.height());
    }

    double x(int strip, double metres) {
        Lattice.Strip it = lattice.strips().get(strip);
        double share = it.lengthMetres() == 0 ? 0 : (metres - it.fromMetres()) / it.lengthMetres();
        return left.get(strip) + share * width.get(strip);
    }

    double y(double seconds) {
        return plot.y() + seconds / lattice.lastSeconds() * plot.height();
    }

    /** The ray nearest to a place of the sheet. */
    /**
     * Finds the echoes at a place: that of a label, or all whose way passes it.
     *
     * @param x across
     * @param y down
     * @return numbers of the echoes; none where nothing is near
     */
    public Set<Integer> echoesAt(double x, double y) {
        return labelAt(x, y)
                .map(Set::of)
                .or(() -> rayAt(x, y).map(Lattice.Ray::echoes))
                .orElse(Set.of());
    }

    Optional<Lattice.Ray> rayAt(double px, double py) {
        Lattice.Ray best = null;
        double nearest = NEAR_FONTS * font;
        for (Lattice.Ray ray : lattice.rays()) {
            double apart = distance(
                    px,
                    py,
                    x(ray.strip(), ray.fromMetres()),
                    y(ray.fromSeconds()),
                    x(ray.strip(), ray.toMetres()),
                    y(ray.toSeconds()));
            if (apart <= nearest) {
                nearest = apart;
                best = ray;
            }
        }
        return Optional.ofNullable(best);
    }

    private static double distance(double px, double py, double x1, double y1, double x2, double y2) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        double size = dx * dx + dy * dy;
        double along = size == 0 ? 0 : Math.max(0, Math.min(1, ((px - x1) * dx + (py - y1) * dy) / size));
        return Math.hypot(px - x1 - along * dx, py - y1 - along * dy);
    }

    /** Heights at which the labels of echoes stand beside the plot, none over another; as many as find room. */
    List<Label> labels() {
        double line = 1.35 * font;
        int most = (int) Math.max(1, plot.height() / line);
        List<Integer> shown = new ArrayList<>();
        for (int i = 0; i < lattice.echoes().size(); i++) {
            shown.add(i);
        }
        while (shown.size() > most) {
            shown.remove(weakest(shown));
        }
        double[] at = new double[shown.size()];
        double floor = plot.y();
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(floor, y(lattice.echoes().get(shown.get(i)).path().arrivalSeconds()));
            floor = at[i] + line;
        }
        double ceiling = plot.bottom();
        List<Label> labels = new ArrayList<>();
        for (int i = at.length - 1; i >= 0; i--) {
            at[i] = Math.min(ceiling, at[i]);
            ceiling = at[i] - line;
            labels.add(0, new Label(shown.get(i), at[i]));
        }
        return labels;
    }

    private int weakest(List<Integer> shown) {
        int weakest = 0;
        for (int i = 1; i < shown.size(); i++) {
            weakest = size(shown.get(i)) < size(shown.get(weakest)) ? i : weakest;
        }
        return weakest;
    }

    private double size(int echo) {
        return Math.abs(lattice.echoes().get(echo).path().peakVolts());
    }

    /** The echo whose label stands at a place of the sheet. */
    Optional<Integer> labelAt(double px, double py) {
        return labels().stream()
                .filter(label -> px < plot.x() && Math.abs(py - label.y()) <= NEAR_FONTS * font)
                .map(Label::echo)
                .findFirst();
    }

    /** A label of an echo, and how far down it stands. */
    record Label(int echo, double y) {}
}

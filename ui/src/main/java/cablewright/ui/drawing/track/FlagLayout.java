// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.axis.DistanceView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where flags stand on a plot: those that would cover each other on lower rows. */
public final class FlagLayout {

    static final double WIDTH = 23;
    static final double HEIGHT = 18;

    private static final double GAP = 3;
    private static final double REACH = 6;

    private final List<Placed> placed = new ArrayList<>();
    private final double s;

    /**
     * One staff: of a flag's place, or of the end of its stretch.
     *
     * @param marker the flag
     * @param second whether it is the end of the stretch
     */
    public record Staff(FlagMarker marker, boolean second) {

        double metres() {
            return second ? marker.endMetres().orElseThrow() : marker.startMetres();
        }

        String label() {
            return second ? marker.letter() + "′" : marker.letter();
        }
    }

    record Placed(Staff staff, double x, double y) {}

    /**
     * Lays out flags.
     *
     * @param markers the flags
     * @param view which distances are on which pixels
     * @param top top of the plot
     * @param scale how much larger than usual everything is drawn
     */
    public FlagLayout(List<FlagMarker> markers, DistanceView view, double top, double scale) {
        this.s = scale;
        List<Staff> staffs = new ArrayList<>();
        for (FlagMarker marker : markers) {
            staffs.add(new Staff(marker, false));
            marker.endMetres().ifPresent(end -> staffs.add(new Staff(marker, true)));
        }
        staffs.sort(Comparator.comparingDouble(Staff::metres));
        List<Double> rowEnds = new ArrayList<>();
        for (Staff staff : staffs) {
            double x = view.pixel(staff.metres());
            int row = 0;
            while (row < rowEnds.size() && rowEnds.get(row) > x) {
                row++;
            }
            if (row == rowEnds.size()) {
                rowEnds.add(0.0);
            }
            rowEnds.set(row, x + (WIDTH + GAP) * s);
            placed.add(new Placed(staff, x, top + row * (HEIGHT + GAP) * s));
        }
    }

    List<Placed> placed() {
        return placed;
    }

    /**
     * Finds the staff under the pointer; its cloth wins over a bare staff.
     *
     * @param x across
     * @param y down
     * @return the staff, if one is near enough
     */
    public Optional<Staff> at(double x, double y) {
        return placed.stream()
                .filter(one -> x >= one.x() - REACH * s
                        && x <= one.x() + (WIDTH + GAP) * s
                        && y >= one.y()
                        && y <= one.y() + HEIGHT * s)
                .reduce((first, second) -> second)
                .or(() -> placed.stream()
                        .filter(one -> Math.abs(x - one.x()) <= REACH * s * 0.7 && y >= one.y())
                        .min(Comparator.comparingDouble(one -> Math.abs(x - one.x()))))
                .map(Placed::staff);
    }

    /**
     * Counts the flags that a box would cover.
     *
     * @param x left edge
     * @param y top edge
     * @param width its width
     * @param height its height
     * @return how many
     */
    public long clothsUnder(double x, double y, double width, double height) {
        return placed.stream()
                .filter(one -> one.x() < x + width
                        && one.x() + WIDTH * s > x
                        && one.y() < y + height
                        && one.y() + HEIGHT * s > y)
                .count();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets labels beside each other in a few rows so that none covers another; what finds no room is left out. */
public final class LabelRows {

    private final double left;
    private final double right;
    private final double gap;
    private final List<Double> filledTo = new ArrayList<>();

    /**
     * Where a label goes.
     *
     * @param row its row, from 0
     * @param leftPixels where it begins
     */
    public record Place(int row, double leftPixels) {}

    /**
     * Makes empty rows.
     *
     * @param left where rows begin [pixels]
     * @param right where they end [pixels]
     * @param gap least distance of two labels [pixels]
     * @param rows how many rows there are
     */
    public LabelRows(double left, double right, double gap, int rows) {
        this.left = left;
        this.right = right;
        this.gap = gap;
        for (int i = 0; i < rows; i++) {
            filledTo.add(left - gap);
        }
    }

    /**
     * Finds room for the next label; labels come from left to right.
     *
     * @param centre where its middle should be [pixels]
     * @param width how wide it is [pixels]
     * @return its place, moved no further than to keep it whole; empty where every row is full there
     */
    public Optional<Place> next(double centre, double width) {
        double wanted = Math.max(left, Math.min(right - width, centre - width / 2));
        for (int row = 0; row < filledTo.size(); row++) {
            if (filledTo.get(row) + gap <= wanted) {
                filledTo.set(row, wanted + width);
                return Optional.of(new Place(row, wanted));
            }
        }
        for (int row = 0; row < filledTo.size(); row++) {
            double start = filledTo.get(row) + gap;
            if (start <= centre && start + width <= right) {
                filledTo.set(row, start + width);
                return Optional.of(new Place(row, start));
            }
        }
        return Optional.empty();
    }
}

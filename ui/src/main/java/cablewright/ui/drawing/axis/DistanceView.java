// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

/**
 * The part of the distance axis that is shown, and the pixels on which it is shown. All tracks of a screen share one.
 *
 * @param fromMetres distance at the left edge [m]
 * @param toMetres distance at the right edge [m], above {@code fromMetres}
 * @param leftPixels where the left edge is
 * @param widthPixels pixels from edge to edge, above 0
 */
public record DistanceView(double fromMetres, double toMetres, double leftPixels, double widthPixels) {

    /** Refuses an axis of no length. */
    public DistanceView {
        if (!(toMetres > fromMetres) || !(widthPixels > 0)) {
            throw new IllegalArgumentException("the axis from " + fromMetres + " to " + toMetres + " m on "
                    + widthPixels + " pixels has no length; both must be above 0");
        }
    }

    /**
     * Returns where a distance is drawn.
     *
     * @param metres distance [m]
     * @return pixel, perhaps outside of the edges
     */
    public double pixel(double metres) {
        return leftPixels + widthPixels * (metres - fromMetres) / spanMetres();
    }

    /**
     * Returns which distance is drawn at a pixel.
     *
     * @param pixel the pixel
     * @return distance [m]
     */
    public double metres(double pixel) {
        return fromMetres + spanMetres() * (pixel - leftPixels) / widthPixels;
    }

    /**
     * Returns how much is shown.
     *
     * @return distance from edge to edge [m]
     */
    public double spanMetres() {
        return toMetres - fromMetres;
    }

    /**
     * Returns how much one pixel stands for.
     *
     * @return distance [m]
     */
    public double metresPerPixel() {
        return spanMetres() / widthPixels;
    }

    /**
     * Returns the right edge.
     *
     * @return pixel
     */
    public double rightPixels() {
        return leftPixels + widthPixels;
    }

    /**
     * Puts the same part of the axis on other pixels.
     *
     * @param left where the left edge is
     * @param width pixels from edge to edge
     * @return the axis there
     */
    public DistanceView on(double left, double width) {
        return new DistanceView(fromMetres, toMetres, left, width);
    }

    /**
     * Shows more or less of the axis, with one distance staying where it is.
     *
     * @param metres the distance that stays [m]
     * @param factor above 1 shows less (nearer), below 1 shows more
     * @param extent all there is to show
     * @return the axis, never beyond the extent and never under a thousandth of it
     */
    public DistanceView zoomed(double metres, double factor, Extent extent) {
        double span = Math.max(
                extent.spanMetres() / Extent.DEEPEST_ZOOM, Math.min(extent.spanMetres(), spanMetres() / factor));
        double share = Math.max(0, Math.min(1, (metres - fromMetres) / spanMetres()));
        return within(metres - share * span, span, extent);
    }

    /**
     * Shifts the axis.
     *
     * @param metres how far toward greater distances [m]
     * @param extent all there is to show
     * @return the axis, never beyond the extent
     */
    public DistanceView panned(double metres, Extent extent) {
        return within(fromMetres + metres, spanMetres(), extent);
    }

    /**
     * Shifts the axis as little as needed to show a distance.
     *
     * @param metres the distance [m]
     * @param extent all there is to show
     * @return the axis with the distance between its edges, if the extent holds it
     */
    public DistanceView showing(double metres, Extent extent) {
        if (metres < fromMetres) {
            return panned(metres - fromMetres, extent);
        }
        return metres > toMetres ? panned(metres - toMetres, extent) : this;
    }

    private DistanceView within(double from, double span, Extent extent) {
        double start = Math.max(extent.fromMetres(), Math.min(extent.toMetres() - span, from));
        return new DistanceView(start, start + span, leftPixels, widthPixels);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

/**
 * All of the distance axis that there is to show.
 *
 * @param fromMetres where it begins [m]
 * @param toMetres where it ends [m], above {@code fromMetres}
 */
public record Extent(double fromMetres, double toMetres) {

    /** How many times nearer than the whole one can look. */
    public static final double DEEPEST_ZOOM = 1000;

    /** Share of the range that is shown before zero, so that the outgoing edge can be seen. */
    private static final double LEAD_IN = 0.02;

    /** Refuses an extent of no length. */
    public Extent {
        if (!(toMetres > fromMetres)) {
            throw new IllegalArgumentException(
                    "the extent from " + fromMetres + " to " + toMetres + " m has no length; it must be above 0");
        }
    }

    /**
     * Returns the extent of an instrument's range, with a little before zero.
     *
     * @param rangeMetres the range [m]
     * @return the extent
     */
    public static Extent ofRange(double rangeMetres) {
        return new Extent(-LEAD_IN * rangeMetres, rangeMetres);
    }

    /**
     * Returns the length.
     *
     * @return distance from end to end [m]
     */
    public double spanMetres() {
        return toMetres - fromMetres;
    }
}

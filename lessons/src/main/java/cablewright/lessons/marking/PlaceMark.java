// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

/**
 * How near one flagged place is. All distances are counted from the end from which the flag was read.
 *
 * @param edge which place of the event it is
 * @param flaggedMetres where the flag is [m]
 * @param expectedMetres where a perfect reader puts it: at the velocity that the brief states, or else at the one set [m]
 * @param readMetres where the trace shows it at the velocity that was set [m]
 * @param trueMetres where it is on the cable [m]
 * @param toleranceMetres how near it must be to count in full [m]
 * @param marks marks earned, 0 to {@code outOf}
 * @param outOf marks that the place is worth
 */
public record PlaceMark(
        Edge edge,
        double flaggedMetres,
        double expectedMetres,
        double readMetres,
        double trueMetres,
        double toleranceMetres,
        double marks,
        double outOf) {

    /** Places of an event, in the order in which the wave meets them. */
    public enum Edge {
        /** The one place of a thing at one place. */
        ONLY,
        /** The nearer edge of a stretch. */
        NEARER,
        /** The farther edge of a stretch. */
        FARTHER
    }

    /**
     * Returns how far off the flag is.
     *
     * @return distance from where a perfect reader puts it [m]
     */
    public double errorMetres() {
        return Math.abs(flaggedMetres - expectedMetres);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

/**
 * How near one flagged place is. All distances are counted from the end from which the flag was read.
 *
 * @param edge which place of the event it is
 * @param flaggedMetres where the flag is [m]
 * @param fromMetres where the stretch begins in which the place is right: from the true place to where a perfect reader of
 *     the noise-free trace puts it at the right velocity [m]
 * @param toMetres where that stretch ends [m]
 * @param readMetres where a perfect reader puts it at the velocity that was set [m]
 * @param trueMetres where it is on the cable, the nearest to the flag [m]
 * @param lateMetres by how much half-way up the edge lies farther than the true place, at the right velocity; negative where
 *     it lies nearer [m]
 * @param readErrorMetres how far the flag is from where the trace shows the edge at the velocity that was set [m]
 * @param rightFraction velocity that the brief states, or else the one at which the trace shows the true place, over that of
 *     light
 * @param toleranceMetres how near it must be to count in full [m]
 * @param marks marks earned, 0 to {@code outOf}
 * @param outOf marks that the place is worth
 */
public record PlaceMark(
        Edge edge,
        double flaggedMetres,
        double fromMetres,
        double toMetres,
        double readMetres,
        double trueMetres,
        double lateMetres,
        double readErrorMetres,
        double rightFraction,
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
     * @return distance from the stretch in which the place is right [m]
     */
    public double errorMetres() {
        return Math.max(0, Math.max(fromMetres - flaggedMetres, flaggedMetres - toMetres));
    }

    /**
     * Returns how far off the flag is, and to which side.
     *
     * @return positive where it is farther than the stretch in which the place is right, negative where nearer [m]
     */
    public double signedErrorMetres() {
        return flaggedMetres < fromMetres ? -errorMetres() : errorMetres();
    }

    /**
     * Returns by how far one would dig beside the true place.
     *
     * @return flag less true place [m]
     */
    public double digErrorMetres() {
        return flaggedMetres - trueMetres;
    }

    /** Whether the edge on the trace was hit, whatever the velocity. */
    boolean isThere() {
        return Math.min(errorMetres(), readErrorMetres()) <= toleranceMetres;
    }

    boolean isNear() {
        return Math.min(errorMetres(), readErrorMetres()) <= MarkingRules.NO_MATCH_TOLERANCES * toleranceMetres;
    }
}

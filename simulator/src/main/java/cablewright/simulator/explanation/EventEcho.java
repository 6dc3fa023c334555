// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

/**
 * What one place of an event does to the noise-free trace: the difference between the trace with the event and the trace
 * without it, in the window that belongs to the place.
 *
 * @param eventId the event's name
 * @param trueMetres where the place is on the cable, from the cable's near end [m]
 * @param shownMetres where the trace shows it, at the set velocity, from the end tested [m]
 * @param thereAndBackSeconds time of the wave from port to place and back [s]
 * @param halfWaySeconds when the trace of the whole cable passes half-way up or down the edge of the first lobe, from the last
 *     turn of the trace before it, counted like the time there and back: where a perfect reader puts the place [s]
 * @param halfWayFromArrivalSeconds the same from the level at which the wave from the place is back [s]
 * @param firstVolts top of the first lobe of the difference, with its sign, for an outgoing wave of 1 V [V]
 * @param firstTopMetres where that top lies on the trace's axis [m]
 * @param secondVolts top of what follows with the other sign, with its sign [V]; 0 where nothing does
 * @param secondTopMetres where that top lies [m]; that of the first lobe where nothing follows
 * @param lastVolts the difference at the end of the window [V]
 * @param showsFromMetres from where on the difference is at least a tenth of its largest [m]
 * @param showsToMetres up to where it is [m]
 */
public record EventEcho(
        String eventId,
        double trueMetres,
        double shownMetres,
        double thereAndBackSeconds,
        double halfWaySeconds,
        double halfWayFromArrivalSeconds,
        double firstVolts,
        double firstTopMetres,
        double secondVolts,
        double secondTopMetres,
        double lastVolts,
        double showsFromMetres,
        double showsToMetres) {

    /** A quarter: what is smaller beside the first lobe is no second lobe, and a level so low has come back. */
    private static final double TELLING_SHARE = 0.25;

    /**
     * Returns whether the trace swings the other way after the first lobe.
     *
     * @return whether the second lobe is at least a quarter of the first
     */
    public boolean swingsBack() {
        return firstVolts != 0 && Math.abs(secondVolts) >= TELLING_SHARE * Math.abs(firstVolts);
    }

    /**
     * Returns whether the trace stays at a new level to the end of the window, as it does for a step.
     *
     * @return whether the last difference is at least a quarter of the first lobe, with its sign
     */
    public boolean stays() {
        return firstVolts != 0 && lastVolts / firstVolts >= TELLING_SHARE;
    }
}

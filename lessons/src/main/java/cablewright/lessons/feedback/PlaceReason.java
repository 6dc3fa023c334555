// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.marking.PlaceMark;

/**
 * What explains a place that is off.
 *
 * @param place the place
 * @param cause what explains it best
 * @param setFraction velocity that was set, over that of light
 * @param explainingFraction velocity at which the trace would have shown the event where the flag is
 * @param secondsOff time there and back by which the flag is farther than the trace shows the event; negative where nearer [s]
 * @param topMetres where the top of the echo nearest to the flag lies on the trace [m]
 */
public record PlaceReason(
        PlaceMark place,
        Cause cause,
        double setFraction,
        double explainingFraction,
        double secondsOff,
        double topMetres) {

    /** What can put a flag at a wrong place. */
    public enum Cause {
        /** It was read well, but the velocity that was set shows it elsewhere. */
        VELOCITY,
        /** It stands at a top of the echo, not at its front, where distance is read. */
        TOP_NOT_FRONT,
        /** It was read off. */
        READING
    }
}

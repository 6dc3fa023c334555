// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import java.util.OptionalDouble;

/**
 * A flag as it stands on the trace track.
 *
 * @param letter its letter, unique on the track
 * @param startMetres where it stands, at the set velocity [m]
 * @param endMetres where its stretch ends [m]; absent for a flag at one place
 * @param look its colour and shape
 * @param selected whether keys act on it
 */
public record FlagMarker(String letter, double startMetres, OptionalDouble endMetres, Look look, boolean selected) {

    /** What a flag says by colour and, as a second cue, by shape and staff. */
    public enum Look {
        /** Belongs: green, a pointed tag on a dashed staff. */
        BELONGS,
        /** Damage: vermilion, a swallow tail on a full staff. */
        DAMAGE,
        /** Not said yet: grey, a plain tag on a dotted staff. */
        UNSAID
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.EventKind;
import java.util.List;

/** Two things that are to be distinguished in one exercise. */
public enum Contrast {
    /** Nothing in particular. */
    NONE,
    /** Two strong events, so that a ghost of them shows in open cable beside real events. */
    GHOST_AND_EVENT,
    /** A splice and a connector on the same line. */
    SPLICE_AND_CONNECTOR,
    /** A break or a contact between the ends, met from both, with the length known and the velocity not. */
    BOTH_ENDS,
    /** Something near that only short pulses part, and a fault so far that only long ones reach it. */
    LADDER_OF_WIDTHS;

    /**
     * Returns whether lines of a family can have both.
     *
     * @param family the family
     * @return whether an exercise can be asked for
     */
    public boolean isKnownTo(ExerciseFamily family) {
        return switch (this) {
            case NONE -> true;
            case GHOST_AND_EVENT -> family.damage().contains(EventKind.PARTIAL_SHORT);
            case BOTH_ENDS ->
                family != ExerciseFamily.REEL_ACCEPTANCE && family.damage().contains(EventKind.OPEN);
            case LADDER_OF_WIDTHS -> family == ExerciseFamily.TELEPHONE_LOOP;
            case SPLICE_AND_CONNECTOR -> family.hardware().containsAll(List.of(EventKind.SPLICE, EventKind.CONNECTOR));
        };
    }
}

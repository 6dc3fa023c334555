// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.asbuilt;

import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;

/**
 * What the drawings say the line ends in.
 *
 * @param kind what it is
 * @param label the drawing's words, such as "75 Ω terminator at the lamp house"
 */
public record RecordedEnd(Kind kind, @Text String label) {

    /** What a line can be drawn to end in. */
    public enum Kind {
        /** Left open. */
        OPEN,
        /** Shorted. */
        SHORT,
        /** Closed by a terminator. */
        TERMINATED,
        /** Equipment that stays joined. */
        EQUIPMENT,
        /** The record does not say. */
        NOT_SAID
    }

    /** Checks the ranges. */
    public RecordedEnd {
        Require.components(RecordedEnd.class, kind, label);
    }
}

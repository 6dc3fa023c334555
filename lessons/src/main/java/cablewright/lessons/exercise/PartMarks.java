// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * Marks of the parts of one event.
 *
 * @param placeMarks marks for the place, 0 to 100
 * @param kindMarks marks for the kind, 0 to 100
 * @param verdictMarks marks for the verdict, 0 to 100
 */
public record PartMarks(
        @Between(least = 0, most = 100) double placeMarks,
        @Between(least = 0, most = 100) double kindMarks,
        @Between(least = 0, most = 100) double verdictMarks) {

    /** What counts where the instructor sets nothing (ours; common practice, no source). */
    public static final PartMarks USUAL = new PartMarks(4, 3, 3);

    /** Checks the ranges. */
    public PartMarks {
        Require.components(PartMarks.class, placeMarks, kindMarks, verdictMarks);
    }

    public double total() {
        return placeMarks + kindMarks + verdictMarks;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.draft;

import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Matches;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.SettableVelocity;
import cablewright.simulator.wave.Stimulus;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A flag that is being set. Unlike a flag that is handed in, it may not say yet what it marks, and the second place of a
 * stretch may lie on either side of the first.
 *
 * @param letter 1 to 3 capital letters that name the flag
 * @param end the end from which the distance was read
 * @param startMetres its place as shown at the velocity that was set, 0 to 200000 [m]
 * @param otherMetres the other place of a stretch, 0 to 200000 [m]; absent for one place
 * @param kind what is there; absent until it is said
 * @param verdict whether it belongs; absent until it is said
 * @param velocityFraction velocity that was set, over that of light, 0.05 to 1
 * @param stimulus outgoing wave that was set when the place was read
 */
public record FlagSketch(
        @Matches(pattern = "[A-Z]{1,3}", words = "1 to 3 capital letters") String letter,
        LineEnd end,
        @Between(least = 0, most = FlagSketch.MOST_METRES) double startMetres,
        @Between(least = 0, most = FlagSketch.MOST_METRES) OptionalDouble otherMetres,
        Optional<EventKind> kind,
        Optional<Verdict> verdict,
        @SettableVelocity double velocityFraction,
        Stimulus stimulus) {

    /** Farthest place of a flag [m]. */
    static final double MOST_METRES = 200_000;

    /** Checks the ranges. */
    public FlagSketch {
        Require.components(
                FlagSketch.class, letter, end, startMetres, otherMetres, kind, verdict, velocityFraction, stimulus);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

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
 * A trainee's claim: here, this kind of event, and it belongs or it is damage. Places are those of the trainee's screen.
 *
 * @param letter 1 to 3 capital letters that name the flag
 * @param end the end from which the distance was read
 * @param startMetres the place, or the near edge of a stretch, as shown at the velocity that was set, 0 to 200000 [m]
 * @param endMetres far edge of a stretch, not before its near edge [m]; absent for one place
 * @param kind what is there
 * @param verdict whether it belongs
 * @param velocityFraction velocity that was set, over that of light, 0.05 to 1
 * @param stimulus outgoing wave that was set when the place was read; absent for that of the attempt
 */
public record Flag(
        @Matches(pattern = "[A-Z]{1,3}", words = "1 to 3 capital letters") String letter,
        LineEnd end,
        @Between(least = 0, most = Flag.MOST_METRES) double startMetres,
        @Between(least = 0, most = Flag.MOST_METRES) OptionalDouble endMetres,
        EventKind kind,
        Verdict verdict,
        @SettableVelocity double velocityFraction,
        Optional<Stimulus> stimulus) {

    private static final double MOST_METRES = 200_000;

    /** Checks the ranges. */
    public Flag {
        Require.components(Flag.class, letter, end, startMetres, endMetres, kind, verdict, velocityFraction, stimulus);
        endMetres.ifPresent(metres -> Require.between("endMetres", metres, startMetres, MOST_METRES));
    }

    /**
     * Makes a flag that was read with the outgoing wave of its attempt.
     *
     * @param letter its letter
     * @param end the end from which the distance was read
     * @param startMetres the place, or the near edge of a stretch [m]
     * @param endMetres far edge of a stretch [m]
     * @param kind what is there
     * @param verdict whether it belongs
     * @param velocityFraction velocity that was set
     */
    public Flag(
            String letter,
            LineEnd end,
            double startMetres,
            OptionalDouble endMetres,
            EventKind kind,
            Verdict verdict,
            double velocityFraction) {
        this(letter, end, startMetres, endMetres, kind, verdict, velocityFraction, Optional.empty());
    }
}

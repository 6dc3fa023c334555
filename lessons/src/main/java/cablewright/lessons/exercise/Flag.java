// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
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
 */
public record Flag(
        String letter,
        LineEnd end,
        double startMetres,
        OptionalDouble endMetres,
        EventKind kind,
        Verdict verdict,
        double velocityFraction) {

    private static final double MOST_METRES = 200_000;

    /** Refuses values that can't be. */
    public Flag {
        if (letter == null || !letter.matches("[A-Z]{1,3}")) {
            throw new IllegalArgumentException("letter is \"" + letter + "\"; it needs 1 to 3 capital letters");
        }
        Require.present("end", end);
        Require.between("startMetres", startMetres, 0, MOST_METRES);
        Require.present("endMetres", endMetres);
        endMetres.ifPresent(metres -> Require.between("endMetres", metres, startMetres, MOST_METRES));
        Require.present("kind", kind);
        Require.present("verdict", verdict);
        Require.between("velocityFraction", velocityFraction, 0.05, 1);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Require;
import cablewright.simulator.line.CableType;

/**
 * A length of one type of cable.
 *
 * @param type the type of cable
 * @param lengthMetres its length [m], above 0 to {@value #MOST_METRES}
 */
public record Run(CableType type, @Above(floor = 0, most = MOST_METRES) double lengthMetres) {

    /** Longest run [m]. */
    public static final double MOST_METRES = 100_000;

    /** Refuses a missing type and an impossible length. */
    public Run {
        Require.components(Run.class, type, lengthMetres);
    }
}

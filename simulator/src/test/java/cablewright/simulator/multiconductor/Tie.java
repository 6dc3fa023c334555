// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

/**
 * A resistor between two conductors at an end of a coupled line, or between one and the reference.
 *
 * @param from a conductor, from 0
 * @param to another conductor, or {@link #REFERENCE}
 * @param ohms resistance, above 0 to 1e12 [Ω]
 */
public record Tie(int from, int to, double ohms) {

    /** Stands for the reference: the shield. */
    public static final int REFERENCE = -1;

    // Refuses a tie that can't be.
    public Tie {
        if (from < 0 || to < REFERENCE || from == to) {
            throw new IllegalArgumentException("from is " + from + " and to is " + to
                    + "; they must be two conductors, from 0, or a conductor and the reference, " + REFERENCE);
        }
        if (!(ohms > 0 && ohms <= 1e12)) {
            throw new IllegalArgumentException("ohms is " + ohms + "; allowed is above 0 to 1e12");
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.simulator.cable.LineEnd;

/**
 * The stretch of the trace that a finding is about.
 *
 * @param end the end from which it is counted
 * @param fromMetres where it begins at the set velocity [m]
 * @param toMetres where it ends [m]
 */
public record LookHere(LineEnd end, double fromMetres, double toMetres) {

    /** Refuses a stretch that ends before it begins. */
    public LookHere {
        if (!(toMetres >= fromMetres)) {
            throw new IllegalArgumentException(
                    "toMetres is " + toMetres + "; it must not be less than fromMetres, " + fromMetres);
        }
    }
}

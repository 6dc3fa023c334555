// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import java.util.List;

/**
 * One line that a wave took from one scatterer to the next: a stroke of a lattice diagram.
 *
 * @param branchIds names of the events by which the branch leaves to which the line belongs; empty for the line itself
 * @param fromMetres where it set out, on the measure of its own cable [m]
 * @param toMetres where it came to [m]; less than where it set out on the way back
 * @param fromSeconds when its front set out, after the outgoing wave began [s]
 * @param toSeconds when its front came there [s]
 * @param volts how high it still was there, without sign, for an outgoing wave of 1 V [V]
 */
public record PathLeg(
        List<String> branchIds,
        double fromMetres,
        double toMetres,
        double fromSeconds,
        double toSeconds,
        double volts) {

    /** Copies the list. */
    public PathLeg {
        branchIds = List.copyOf(branchIds);
    }
}

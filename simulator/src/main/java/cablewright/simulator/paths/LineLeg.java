// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import cablewright.simulator.kernel.ComplexArray;
import java.util.List;

/**
 * A uniform length of line between two scatterers.
 *
 * @param near the scatterer on the side of the source, by its number
 * @param nearPort the port of it at which the line leaves
 * @param far the scatterer at the other end, by its number; the line meets its port 0
 * @param branchIds names of the events by which the branch leaves to which it belongs; empty for the line itself
 * @param startMetres where it begins, on the measure of its own cable [m]
 * @param endMetres where it ends [m]
 * @param seconds time of a wave's front from one end to the other [s]
 * @param decay what is left of a wave after one way, e^(−γl)
 */
public record LineLeg(
        int near,
        int nearPort,
        int far,
        List<String> branchIds,
        double startMetres,
        double endMetres,
        double seconds,
        ComplexArray decay) {

    /** Copies the list. */
    public LineLeg {
        branchIds = List.copyOf(branchIds);
    }
}

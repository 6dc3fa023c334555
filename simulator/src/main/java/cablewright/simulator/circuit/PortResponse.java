// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import java.util.Optional;

/**
 * All that can be known of a line from one of its ends: the reflection coefficient at the port, on a grid of complex
 * frequencies.
 *
 * <p>It comes from a simulated cable, from a measured sweep, or from a sealed paper that holds no cable at all; whatever
 * reads a line works on this alone and never reaches back for the cable.
 */
public interface PortResponse {

    /**
     * Returns the reference resistance of the reflection coefficient: that of the source which drives the port.
     *
     * @return resistance [Ω]
     */
    double referenceOhms();

    /**
     * Returns the grid that the response came with.
     *
     * @return the one grid on which it can be asked for, or empty where any grid will do
     */
    Optional<ContourGrid> nativeGrid();

    /**
     * Returns the reflection coefficient on a grid.
     *
     * @param grid the grid
     * @param count how many frequencies are wanted, from the lowest; 1 to {@code grid.frequencies()}
     * @return Γ at the first {@code count} frequencies of the grid
     * @throws IllegalArgumentException if the response is known on another grid only
     */
    ComplexArray reflection(ContourGrid grid, int count);

    /**
     * Returns the reflection coefficient on a grid, to serve a known stimulus.
     *
     * @param grid the grid
     * @param count how many frequencies are wanted, from the lowest
     * @param edgeSeconds duration of the shortest edge that will be sent [s]; a simulated cable takes its profiles in steps
     *     that serve it
     * @return Γ at the first {@code count} frequencies of the grid
     * @throws IllegalArgumentException if the response is known on another grid only
     */
    default ComplexArray reflection(ContourGrid grid, int count, double edgeSeconds) {
        return reflection(grid, count);
    }

    /**
     * Checks the resistance of a source, on which reflections are stated.
     *
     * @param field the field's name, for the refusal
     * @param ohms the resistance [Ω]
     * @return the resistance
     * @throws IllegalArgumentException unless it is 0.1 to 1e5
     */
    static double requireSource(String field, double ohms) {
        return Require.between(field, ohms, 0.1, 1e5);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.port;

import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.solve.ReflectionSolver;
import java.util.Optional;

/**
 * The port of any circuit.
 *
 * @param network the circuit
 * @param referenceOhms resistance of the source [Ω]
 */
public record NetworkPort(Network network, double referenceOhms) implements PortResponse {

    @Override
    public Optional<ContourGrid> nativeGrid() {
        return Optional.empty();
    }

    @Override
    public ComplexArray reflection(ContourGrid grid, int count) {
        return ReflectionSolver.reflection(network, referenceOhms, grid.points().slice(0, count));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import java.util.Optional;

/** The port of an endless line of the source's own impedance. */
record MatchedPort(double referenceOhms) implements PortResponse {

    @Override
    public Optional<ContourGrid> nativeGrid() {
        return Optional.empty();
    }

    @Override
    public ComplexArray reflection(ContourGrid grid, int count) {
        return ComplexArray.takingOver(new double[count], new double[count]);
    }
}

package cablewright.simulator.explanation;

import cablewright.simulator.line.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.network.PortResponse;
import java.util.Optional;

/** The port of an endless line of the source's own impedance. */
record NothingComesBack(double referenceOhms) implements PortResponse {

    @Override
    public Optional<ContourGrid> nativeGrid() {
        return Optional.empty();
    }

    @Override
    public ComplexArray reflection(ContourGrid grid, int count) {
        return ComplexArray.takingOver(new double[count], new double[count]);
    }
}

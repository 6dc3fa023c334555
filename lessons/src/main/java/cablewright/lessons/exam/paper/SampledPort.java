// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import java.util.Arrays;
import java.util.Optional;

/** The port of a sealed paper: a response that is known on one grid, and no cable behind it. */
public final class SampledPort implements PortResponse {

    private final double referenceOhms;
    private final ContourGrid grid;
    private final double[] re;
    private final double[] im;

    SampledPort(double referenceOhms, ContourGrid grid, double[] re, double[] im) {
        this.referenceOhms = referenceOhms;
        this.grid = grid;
        this.re = re;
        this.im = im;
    }

    @Override
    public double referenceOhms() {
        return referenceOhms;
    }

    @Override
    public Optional<ContourGrid> nativeGrid() {
        return Optional.of(grid);
    }

    @Override
    public ComplexArray reflection(ContourGrid asked, int count) {
        if (!asked.equals(grid)) {
            throw new IllegalArgumentException(
                    "the response of a sealed paper is known on its own grid only; ask for nativeGrid()");
        }
        return ComplexArray.takingOver(Arrays.copyOf(re, count), Arrays.copyOf(im, count));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.ReflectionSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A chain of equal T sections, each L/2 in series, C across, L/2 in series, as the port sees it.
 *
 * <p>It passes up to f_c = 1/(π√(LC)); below, a section turns the wave by 2 asin(f/f_c), and the image impedance is
 * √(L/C) √(1 − (f/f_c)²) (O. J. Zobel's constant-k section, from memory).
 *
 * @param sections how many, 1 to 2000
 * @param henries L of one section [H]
 * @param farads C of one section [F]
 * @param load what closes the chain
 * @param referenceOhms reference resistance [Ω]
 */
public record LadderSweep(
        @Between(least = 1, most = 2000) int sections,
        @Between(least = 1e-15, most = 1e3) double henries,
        @Between(least = 1e-18, most = 1) double farads,
        Load load,
        @Between(least = 0.1, most = 1e5) double referenceOhms)
        implements PortResponse {

    /** Checks the ranges. */
    public LadderSweep {
        Require.components(LadderSweep.class, sections, henries, farads, load, referenceOhms);
    }

    /**
     * Returns where a chain stops passing.
     *
     * @return f_c [Hz]
     */
    public double cutoffHertz() {
        return 1 / (Math.PI * Math.sqrt(henries * farads));
    }

    @Override
    public Optional<ContourGrid> nativeGrid() {
        return Optional.empty();
    }

    @Override
    public ComplexArray reflection(ContourGrid grid, int count) {
        return reflection(grid.points().slice(0, count));
    }

    /**
     * Returns the reflection coefficient at a list of frequencies.
     *
     * @param frequencies the frequencies
     * @return Γ
     */
    public ComplexArray reflection(Frequencies frequencies) {
        return ReflectionSolver.reflection(network(), referenceOhms, frequencies);
    }

    Network network() {
        List<Element> elements = new ArrayList<>();
        Set<String> nobody = Set.of();
        for (int i = 0; i < sections; i++) {
            elements.add(new Element.Series(Lumped.inductor(i == 0 ? henries / 2 : henries), nobody));
            elements.add(new Element.Shunt(Lumped.capacitor(farads), nobody));
        }
        elements.add(new Element.Series(Lumped.inductor(henries / 2), nobody));
        return new Network(elements, load);
    }
}

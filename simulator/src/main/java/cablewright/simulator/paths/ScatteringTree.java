// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.line.Frequencies;
import java.util.List;
import java.util.Optional;

/**
 * A cable as scatterers joined by uniform lines, exactly: whatever way a wave takes along the lines, past, back from and
 * through the scatterers, branches included, the product of what it met is its part of Γ, and the sum over all ways is Γ
 * itself.
 *
 * <p>Elements that touch, such as the parts of a tap, the steps of a pinch, or events at one place, are one scatterer, with
 * all that happens among them. What is plain line, or soaked or otherwise changed evenly, is a leg. A branch that is shut
 * off by its own first event belongs to its joint; the leg of a splitter that is met from an output gets nothing, as in
 * {@link Element.Divider}. Waves are of voltage, on the impedance of the line they are on; at the port, on that of the
 * source, which therefore sends nothing back by itself.
 *
 * <p>From L. V. Bewley, Traveling Waves on Transmission Systems, ch. 4 (the lattice; from memory), with matrices in place of
 * numbers.
 *
 * @param scatterers the scatterers; number 0 is the port, every other comes after the one by which the wave reaches it
 * @param legs the lines between them; number i leads to scatterer i + 1
 */
public record ScatteringTree(List<Scatterer> scatterers, List<LineLeg> legs) {

    /** Copies the lists. */
    public ScatteringTree {
        scatterers = List.copyOf(scatterers);
        legs = List.copyOf(legs);
    }

    /**
     * Takes a cable to pieces.
     *
     * @param cable the cable, seen from its near end
     * @param sourceOhms resistance of the source [Ω]
     * @param steps how finely profiles are taken
     * @param frequencies the frequencies of its scatterers
     * @return its scatterers and lines
     */
    public static ScatteringTree of(Cable cable, double sourceOhms, ProfileSteps steps, Frequencies frequencies) {
        return new ScatteringTreeBuilder(frequencies).grow(cable, sourceOhms, steps);
    }

    /**
     * Returns the line by which a wave reaches a scatterer.
     *
     * @param scatterer the scatterer, by its number
     * @return the line; empty for the port
     */
    public Optional<LineLeg> legTo(int scatterer) {
        return scatterer == 0 ? Optional.empty() : Optional.of(legs.get(scatterer - 1));
    }

    /**
     * Returns the line that leaves a scatterer.
     *
     * @param scatterer the scatterer, by its number
     * @param port which of its ports, from 1
     * @return the line
     */
    public LineLeg legFrom(int scatterer, int port) {
        return legs.stream()
                .filter(leg -> leg.near() == scatterer && leg.nearPort() == port)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "port is " + port + "; no line leaves scatterer " + scatterer + " there"));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.netlist;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import java.util.List;

/**
 * A line written for a circuit simulator of the SPICE family: a source with its resistance, lossless lines
 * (T), lines of constant R, L and C (O with a model LTRA), lumped parts, branches and ends. The voltage at node
 * {@code port} is the port's; less the outgoing wave it is what came back.
 *
 * <p>What can't be carried (loss that rises with frequency, dielectrics that relax, conductance beside inductance, ideal
 * dividers) is left out and said, in a comment where it stands and in the notices. Everything starts at rest, so no operating
 * point is asked for (uic). Source of the elements: T. Quarles et al., SPICE3 Version 3f User's Manual, sections on T and O.
 *
 * @param text the netlist, lines ended by a line feed
 * @param notices what it leaves out, one sentence each; empty where it is the whole line
 */
public record Netlist(String text, List<String> notices) {

    // Keeps its own list.
    public Netlist {
        notices = List.copyOf(notices);
    }

    /**
     * Writes a circuit.
     *
     * @param network the circuit
     * @param setup what is to be simulated
     * @return the netlist
     * @throws IllegalArgumentException if it would have more than {@value NetlistWriter#MOST_ELEMENTS} elements
     */
    public static Netlist of(Network network, NetlistSetup setup) {
        return new NetlistWriter(setup).write(network);
    }

    /**
     * Describes a cable as seen from its near end.
     *
     * @param cable the cable
     * @param setup what is to be simulated; its stimulus decides how finely profiles are cut
     * @return the netlist
     * @throws IllegalArgumentException if the cable can't be, or would have too many elements
     */
    public static Netlist of(Cable cable, NetlistSetup setup) {
        return of(
                CableCompiler.compile(
                        cable, ProfileSteps.forEdge(setup.stimulus().shortestEdgeSeconds())),
                setup);
    }
}

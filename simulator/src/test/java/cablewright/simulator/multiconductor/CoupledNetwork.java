// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import java.util.ArrayList;
import java.util.List;

/**
 * A coupled line from its near end to its far one, with resistors at both. Each resistor at the near end is a port: driven,
 * it is the source's own resistance; otherwise what its circuit is ended by while another is driven.
 *
 * @param elements lengths and joints in order from the near end, at least one
 * @param nearEnds resistors at the near end, at least one
 * @param farEnds resistors at the far end; what has none is open
 */
public record CoupledNetwork(List<CoupledElement> elements, List<Tie> nearEnds, List<Tie> farEnds) {

    // Keeps its own lists and refuses pieces that don't fit together.
    public CoupledNetwork {
        elements = List.copyOf(elements);
        nearEnds = List.copyOf(nearEnds);
        farEnds = List.copyOf(farEnds);
        if (elements.isEmpty() || nearEnds.isEmpty()) {
            throw new IllegalArgumentException("there are " + elements.size() + " elements and " + nearEnds.size()
                    + " near ends; at least one of each is needed");
        }
        int conductors = elements.get(0).conductors();
        for (CoupledElement element : elements) {
            if (element.conductors() != conductors) {
                throw new IllegalArgumentException("an element has " + element.conductors()
                        + " conductors and the first has " + conductors + "; all must have as many");
            }
        }
        requireWithin("nearEnds", nearEnds, conductors);
        requireWithin("farEnds", farEnds, conductors);
    }

    private static void requireWithin(String field, List<Tie> ties, int conductors) {
        for (Tie tie : ties) {
            if (tie.from() >= conductors || tie.to() >= conductors) {
                throw new IllegalArgumentException(
                        field + " has " + tie + "; conductors go from 0 to " + (conductors - 1));
            }
        }
    }

    /**
     * Makes a cable of pairs, each ended by the same resistance at both ends and otherwise floating.
     *
     * @param elements lengths and joints in order from the near end
     * @param ohms resistance across each pair at each end [Ω]
     * @return the network; near and far end p are those of pair p
     */
    public static CoupledNetwork ofPairs(List<CoupledElement> elements, double ohms) {
        List<Tie> ends = new ArrayList<>();
        for (int p = 0; !elements.isEmpty() && 2 * p + 1 < elements.get(0).conductors(); p++) {
            ends.add(new Tie(2 * p, 2 * p + 1, ohms));
        }
        return new CoupledNetwork(elements, ends, ends);
    }

    /**
     * Counts the conductors.
     *
     * @return number of conductors, the reference not counted
     */
    public int conductors() {
        return elements.get(0).conductors();
    }
}

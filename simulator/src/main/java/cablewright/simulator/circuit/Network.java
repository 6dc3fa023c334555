// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import java.util.List;

/**
 * A circuit seen from its port: elements in the order in which the wave meets them, and what closes the last one.
 *
 * @param elements the elements
 * @param load what closes the circuit
 */
public record Network(List<Element> elements, Load load) {

    /** Copies the list. */
    public Network {
        elements = List.copyOf(elements);
    }

    /**
     * Counts the elements, those of branches included.
     *
     * @return number of elements
     */
    public int size() {
        int size = 0;
        for (Element element : elements) {
            size++;
            if (element instanceof Element.Branch branch) {
                size += branch.branch().size();
            } else if (element instanceof Element.Divider divider) {
                size += divider.leg().size();
            } else if (element instanceof Element.Split split) {
                size += split.inside().size();
            }
        }
        return size;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Numbers for the lines that a circuit has in common with the one before, under which blocks of frequencies remember them. A
 * line that is met once costs no memory, so a study of different cables runs on a flat heap; while one event is dragged, all
 * else is remembered. What is remembered is what would be computed, to the last bit. Safe for use by several threads.
 */
final class LineNumbers {

    private static final long MOST_BYTES = 64_000_000;
    private static final int BYTES_EACH = 32;

    private final int mostLines;
    private Set<Length> before = Set.of();
    private Map<Length, Integer> numbers = new HashMap<>();
    private int next;

    private record Length(CrossSection section, double metres) {}

    LineNumbers(int frequencies) {
        mostLines = (int) Math.min(1 << 20, MOST_BYTES / BYTES_EACH / frequencies);
    }

    /**
     * Numbers the lines of a circuit, those of branches left out.
     *
     * @return a number for each line worth remembering; a number never stands for another line later
     */
    synchronized Map<Element.Line, Integer> of(Network network) {
        Map<Element.Line, Integer> here = new IdentityHashMap<>();
        Set<Length> seen = new HashSet<>();
        for (Element element : network.elements()) {
            if (element instanceof Element.Line line) {
                Length length = new Length(line.section(), line.lengthMetres());
                seen.add(length);
                if (before.contains(length)) {
                    here.put(line, numbers.computeIfAbsent(length, key -> next++));
                }
            }
        }
        before = seen;
        if (numbers.size() > mostLines) {
            numbers = new HashMap<>();
            return Map.of();
        }
        return here;
    }

    /** Numbers from which on lines may still be asked for; what has a lower one may be forgotten. */
    synchronized int oldest() {
        return next - numbers.size();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import cablewright.simulator.kernel.ComplexArray;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One place of a line that sends part of a wave back and lets part of it pass: an event, the edge of a stretch, a change of
 * cable, the joint of a branch, the port, or an end.
 *
 * <p>It has ports, each on the impedance of the line that leaves there. Port 0 is the side of the source; then come those
 * by which the wave goes on, if it does: the line itself, and branches in the order in which they leave.
 *
 * @param role what sort of place it is
 * @param events names of the events that make it, of the cable on which it lies; empty for the plain port, end or change
 * @param branchIds names of the events by which the branch leaves on which it lies, from the line outwards; empty on the
 *     line itself
 * @param startMetres where it begins, on the measure of its own cable [m]; the test lead lies below zero
 * @param endMetres where it ends on the line that goes on, or at the end of its own cable [m]
 * @param waves what leaves at port i for a wave of 1 V that arrives at port j: {@code waves.get(i).get(j)}
 * @param passSeconds time of a front from port j to port i [s]: {@code passSeconds.get(i).get(j)}; 0 back to where it came
 *     from
 */
public record Scatterer(
        Role role,
        Set<String> events,
        List<String> branchIds,
        double startMetres,
        double endMetres,
        List<List<ComplexArray>> waves,
        List<List<Double>> passSeconds) {

    /** Sorts of place. */
    public enum Role {
        /** Where the source meets the line. */
        PORT,
        /** An event, or an edge of one. */
        EVENT,
        /** Where two types of cable meet. */
        CABLE_CHANGE,
        /** The end of a line. */
        END
    }

    /** Copies the collections. */
    public Scatterer {
        events = Set.copyOf(events);
        branchIds = List.copyOf(branchIds);
        waves = waves.stream().map(List::copyOf).toList();
        passSeconds = passSeconds.stream().map(List::copyOf).toList();
    }

    static Scatterer of(
            Role role,
            Set<String> events,
            List<String> branchIds,
            double startMetres,
            double endMetres,
            ScatteringMatrix s) {
        return new Scatterer(
                role,
                events,
                branchIds,
                startMetres,
                endMetres,
                square(s.ports(), s::wave),
                square(s.ports(), s::seconds));
    }

    private interface Entry<T> {
        T at(int i, int j);
    }

    private static <T> List<List<T>> square(int size, Entry<T> entry) {
        List<List<T>> rows = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            List<T> row = new ArrayList<>();
            for (int j = 0; j < size; j++) {
                row.add(entry.at(i, j));
            }
            rows.add(row);
        }
        return rows;
    }

    /**
     * Says what sends the wave back here.
     *
     * @return the reflector
     */
    public Reflector reflector() {
        if (!events.isEmpty()) {
            return new Reflector.Events(List.copyOf(events));
        }
        return switch (role) {
            case PORT -> new Reflector.Port();
            case CABLE_CHANGE -> new Reflector.CableChange();
            case END, EVENT ->
                branchIds.isEmpty()
                        ? new Reflector.EndOfLine()
                        : new Reflector.EndOfBranch(branchIds.get(branchIds.size() - 1));
        };
    }

    /**
     * Counts the ports.
     *
     * @return number of ports, 1 or more
     */
    public int ports() {
        return waves.size();
    }

    /**
     * Returns what leaves for what arrives.
     *
     * @param out the port at which it leaves
     * @param in the port at which 1 V arrives
     * @return the wave that leaves [V]
     */
    public ComplexArray wave(int out, int in) {
        return waves.get(out).get(in);
    }
}

package cablewright.simulator.network;

import cablewright.simulator.line.ComplexArray;
import java.util.Set;

/**
 * One place of a line that sends part of a wave back and lets part of it pass: an event, the edge of a stretch, a change of
 * cable, the port, or the end.
 *
 * @param role what sort of place it is
 * @param events names of the events that make it; empty for the plain port, end or change of cable
 * @param thereAndBackSeconds time of the wave's front from the port to it and back [s]
 * @param near what it sends back of a wave from the near side (S11), on the lines at its sides
 * @param far what it sends back of a wave from the far side (S22); zero for the end
 * @param thereAndBack what passes it on the way out and again on the way back (S21 S12); zero for the end
 */
public record Scatterer(
        Role role,
        Set<String> events,
        double thereAndBackSeconds,
        ComplexArray near,
        ComplexArray far,
        ComplexArray thereAndBack) {

    /** Sorts of place. */
    public enum Role {
        /** Where the source meets the line. */
        PORT,
        /** An event, or an edge of one. */
        EVENT,
        /** Where two types of cable meet. */
        CABLE_CHANGE,
        /** The end of the line. */
        END
    }
}

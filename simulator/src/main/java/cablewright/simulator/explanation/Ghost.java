package cablewright.simulator.explanation;

import java.util.List;

/**
 * A re-reflection that shows where there is no event.
 *
 * @param path what the wave met, in order: names of events, {@link Sightings#END_OF_LINE} or {@link Ghosts#PORT}
 * @param thereAndBackSeconds when it comes back [s]
 * @param shownMetres where the trace shows it, at the set velocity, from the end tested [m]
 * @param heightVolts about how high it is, without sign, for an outgoing wave of 1 V [V]
 */
public record Ghost(List<String> path, double thereAndBackSeconds, double shownMetres, double heightVolts) {

    /** Copies the list. */
    public Ghost {
        path = List.copyOf(path);
    }
}

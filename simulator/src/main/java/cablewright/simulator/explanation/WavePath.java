package cablewright.simulator.explanation;

import java.util.List;

/**
 * One way by which part of the wave came back.
 *
 * @param turns where the wave turned round, in order: event names, {@link Sightings#END_OF_LINE}, {@link Attribution#PORT} or
 *     {@link Attribution#CABLE_CHANGE}; an odd number, the first, third … away from the port
 * @param arrivalSeconds time of its front after the outgoing wave began [s]
 * @param shownMetres where the trace shows it, at the set velocity, from the end tested [m]
 * @param peakVolts its largest value, with its sign, for an outgoing wave of 1 V [V]
 */
public record WavePath(List<String> turns, double arrivalSeconds, double shownMetres, double peakVolts) {

    /** Copies the list. */
    public WavePath {
        turns = List.copyOf(turns);
    }

    /**
     * Tells a ghost from a first echo.
     *
     * @return whether the wave turned more than once
     */
    public boolean isGhost() {
        return turns.size() > 1;
    }
}

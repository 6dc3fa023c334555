// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import java.util.List;
import java.util.Optional;

/**
 * Anything, wanted or not, by which a place or a stretch of a line differs from the plain cable.
 *
 * <p>There are two families and no third: a component in the line at one place ({@code cable.hardware}), and a condition of
 * the line over a stretch ({@code cable.condition}). Each is sealed and has a visitor of its own; a test of the architecture
 * holds that nothing else is an event. Events are immutable; moving or mirroring one makes another.
 */
public interface Event {

    /**
     * Returns the name by which files, flags and findings refer to the event.
     *
     * @return 1 to 40 letters, digits, '-' or '_', unique within its cable
     */
    String id();

    /**
     * Returns where the event begins.
     *
     * @return distance along the cable from its near end [m]
     */
    double startMetres();

    /**
     * Returns where the event ends; for a thing at one place, where it begins.
     *
     * @return distance along the cable from its near end [m]
     */
    double endMetres();

    /**
     * Returns what the trade calls the event.
     *
     * @return its kind
     */
    EventKind kind();

    /**
     * Moves the event along the cable.
     *
     * @param newStartMetres where it is to begin [m]
     * @return the same event at another place
     */
    Event movedTo(double newStartMetres);

    /**
     * Returns the event as it is met from the other end of its cable.
     *
     * @param cableLengthMetres length of the cable [m]
     * @return the mirrored event
     */
    Event mirrored(double cableLengthMetres);

    /**
     * Returns the cable that leaves the line here, if one does.
     *
     * @return the branch of a bridged tap, the other leg of a splitter
     */
    default Optional<Cable> branchCable() {
        return Optional.empty();
    }

    /**
     * Checks what the event asks of the rest of its cable beside lying within it.
     *
     * @param cableLengthMetres length of the cable [m]
     * @param all all events of the cable, this one among them
     * @throws IllegalArgumentException if they do not go together, saying why
     */
    default void requireRoom(double cableLengthMetres, List<Event> all) {
        // Most events go together with any other.
    }
}

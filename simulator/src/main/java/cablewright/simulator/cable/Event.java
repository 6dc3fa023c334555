package cablewright.simulator.cable;

/**
 * Anything, wanted or not, by which a place or a stretch of a line differs from the plain cable.
 *
 * <p>There are two families and no third: what is {@link PutInLine put in the line} at a place, and what is
 * {@link DoneToLine done to the line} over a stretch. Events are immutable; moving or mirroring one makes another.
 */
public sealed interface Event permits PutInLine, DoneToLine {

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
     * Tells the event as it is met from the other end of its cable.
     *
     * @param cableLengthMetres length of the cable [m]
     * @return the mirrored event
     */
    Event mirrored(double cableLengthMetres);

    /**
     * Calls the visitor's method for this kind of record.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(EventVisitor<T> visitor);
}

/**
 * The cable as the trade describes it: runs of cable, events on it, and how it ends.
 *
 * <p>Positions are metres along the true cable from its near end. Nothing here knows of circuits, frequencies or traces:
 * {@code cablewright.simulator.compile} turns a {@link cablewright.simulator.cable.Cable} into a circuit.
 */
package cablewright.simulator.cable;

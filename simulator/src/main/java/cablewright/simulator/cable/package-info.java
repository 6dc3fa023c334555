/**
 * The cable as the trade tells it: runs of cable, things put in the line, conditions done to the line, and how it ends.
 *
 * <p>Positions are metres along the true cable from its near end. Nothing here knows of circuits, frequencies or traces:
 * the compiler in {@code cablewright.simulator.network} turns a {@link cablewright.simulator.cable.Cable} into a circuit.
 */
package cablewright.simulator.cable;

/**
 * The circuit of a cable: elements, the compiler that makes them from a {@code Cable}, and the solver that tells what
 * comes back at the port and what the wave does along the way.
 *
 * <p>{@link cablewright.simulator.network.PortResponse} is the waist of the whole simulator: all that can be known of a
 * line from its end. Everything that reads a line works on that alone.
 */
package cablewright.simulator.network;

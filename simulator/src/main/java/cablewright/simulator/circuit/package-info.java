/**
 * The circuit of a cable as the wave meets it: elements, networks and loads.
 *
 * <p>{@link cablewright.simulator.circuit.PortResponse} is the waist of the whole simulator: all that can be known of a line
 * from its end. Everything that reads a line works on that alone.
 */
package cablewright.simulator.circuit;

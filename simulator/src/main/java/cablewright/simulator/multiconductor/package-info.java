/**
 * What a neighbour hears of a split: near-end crosstalk as a response of its own, and both near ends as two ports.
 *
 * <p>The engine for any layout of wires is in the tests of this package. It permutes wires, mixes modes and breaks single wires,
 * and splits are held to it; what people use follows from the two modes of a split, in a seventh of the time.
 */
package cablewright.simulator.multiconductor;

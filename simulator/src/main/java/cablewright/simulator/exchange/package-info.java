/**
 * What goes out to other programs and comes in from them: Touchstone files of reflection and transmission against
 * frequency, a measured sweep as a port like any other, traces as CSV, and netlists for general circuit simulators.
 */
package cablewright.simulator.exchange;

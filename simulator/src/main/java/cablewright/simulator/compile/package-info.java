/**
 * From a cable in trade words to a circuit: cuts at every boundary, steps of profiles, and the events that made each
 * element.
 */
package cablewright.simulator.compile;

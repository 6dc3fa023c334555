/**
 * Wires that share their field: cables of several pairs and quads, and lines of any number of conductors over a reference.
 * Joints permute wires; a split pair is nothing but such a joint.
 */
package cablewright.simulator.multiconductor;

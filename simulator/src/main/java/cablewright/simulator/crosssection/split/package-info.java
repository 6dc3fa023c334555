/** How the wires of a split pair and its neighbour lie, and the even and odd modes that follow. */
package cablewright.simulator.crosssection.split;

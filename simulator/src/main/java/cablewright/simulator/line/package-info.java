/** Uniform lines: the grid of complex frequencies and the catalogue of cable types, each with its published source. */
package cablewright.simulator.line;

/** Lattice diagrams: the ways of a wave along a cable and its branches, distance across and time downward. */
package cablewright.ui.lattice;

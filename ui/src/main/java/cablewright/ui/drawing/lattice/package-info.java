// SPDX-License-Identifier: Apache-2.0
/** Lattice diagrams: the ways of echoes between places of the line, drawn and in characters. */
package cablewright.ui.drawing.lattice;

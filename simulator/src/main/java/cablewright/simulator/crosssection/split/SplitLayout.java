// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.split;

/** How the four wires of two pairs lie while each circuit uses one wire of each pair. */
public enum SplitLayout {
    /** Two pairs of one cable, each twisted with a lay of its own, their middles a pitch apart. */
    TWISTED,
    /** A star quad: the pairs as made lie on its diagonals, so the circuits use neighbouring wires. */
    QUAD,
    /** Straight wires at the corners of a rectangle, as in a joint that was opened: pairs as made on the short sides. */
    STRAIGHT
}

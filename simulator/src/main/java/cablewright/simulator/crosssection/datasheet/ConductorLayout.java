// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.datasheet;

/** How a cable known by its data sheet is built. */
public enum ConductorLayout {
    /** A core within a shield. */
    COAX,
    /** Two equal wires side by side. */
    PAIR
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

/** How an end of the neighbouring pair is left while its neighbour is tested. */
public enum NeighbourEnd {
    /** Ended in its own impedance, as by the equipment that it serves: nothing comes back from there. */
    MATCHED,
    /** Left open, as an idle pair is. */
    OPEN,
    /** Shorted. */
    SHORT
}

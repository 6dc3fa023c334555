// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.line.ContourGrid;

/**
 * Remembers what lines do on the grid last used, so that the next cable, which differs in one event, costs little. Share
 * one among the ports of one task; safe for use by several threads.
 */
public final class PropagationCache {

    private static final int MOST_REMEMBERED = 1 << 17;

    private ContourGrid grid;
    private int count;
    private LineTables tables;

    /** Makes an empty memory. */
    public PropagationCache() {
        // Nothing is remembered yet.
    }

    /** Returns the tables of the first frequencies of a grid, those last used if they are the same. */
    public synchronized LineTables tables(ContourGrid wanted, int wantedCount) {
        if (tables != null && wanted.equals(grid) && wantedCount == count) {
            return tables;
        }
        LineTables made = new LineTables(wanted.points().slice(0, wantedCount));
        if (wantedCount <= MOST_REMEMBERED) {
            grid = wanted;
            count = wantedCount;
            tables = made;
        }
        return made;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import cablewright.simulator.check.Readable;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.line.ContourGrid;

/**
 * How far a port's response reaches: which ranges and which edges the instrument may be set to on it. A simulated cable
 * answers any; a measured sweep or a sealed paper only what its own grid holds.
 *
 * @param longestRecordSeconds longest time after the pulse leaves for which the response is known [s]; infinite for any
 * @param shortestEdgeSeconds shortest edge, after the receiver, that the response's band supports [s]; 0 for any
 */
public record Reach(double longestRecordSeconds, double shortestEdgeSeconds) {

    /** Samples of a port's own grid that the shortest edge must last. */
    private static final int SAMPLES_PER_EDGE = 8;

    /**
     * Returns how far a port's response reaches.
     *
     * @param port the port
     * @return its reach
     */
    public static Reach of(PortResponse port) {
        if (port.nativeGrid().isEmpty()) {
            return new Reach(Double.POSITIVE_INFINITY, 0);
        }
        ContourGrid grid = port.nativeGrid().get();
        return new Reach(grid.periodSeconds() / 2, SAMPLES_PER_EDGE * grid.sampleSeconds());
    }

    /** Refuses a record or an edge out of reach, saying what is within. */
    void require(double recordSeconds, double edgeSeconds, Settings settings) {
        // The record that just fits may differ by the last digit.
        if (recordSeconds > longestRecordSeconds * (1 + 1e-9)) {
            double most = settings.rangeMetres() - settings.metresThereAndBack(recordSeconds - longestRecordSeconds);
            throw new IllegalArgumentException("rangeMetres is " + Readable.number(settings.rangeMetres())
                    + "; this response is known for " + longestRecordSeconds + " s, so at this pulse and velocity "
                    + (most > 0
                            ? "the range may be at most " + Readable.number(most) + " m"
                            : "there is no range; use a shorter pulse"));
        }
        if (edgeSeconds < shortestEdgeSeconds * (1 - 1e-9)) {
            throw new IllegalArgumentException("the shortest edge of the pulse is " + edgeSeconds
                    + " s after the receiver; this response supports edges of " + shortestEdgeSeconds
                    + " s and longer: use a wider pulse or a slower step");
        }
    }
}

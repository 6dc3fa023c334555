// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * A place at which a trace shows more than noise: an event of the line, its end, or a ghost of other events. What it is, a
 * trace alone does not say.
 *
 * @param metres distance at the set velocity, with its standard uncertainty from reading and velocity [m]
 * @param seconds time there and back, with its standard uncertainty from reading alone [s]
 * @param heightVolts height of the first lobe, or of a step's change, with its sign, for an outgoing wave of 1 V, with its
 *     standard uncertainty from noise [V]
 * @param shape what the trace does there
 * @param overNoise by how much the matched filters stand above the noise
 */
public record CandidateEvent(
        Measured metres,
        Measured seconds,
        Measured heightVolts,
        CandidateShape shape,
        @Between(least = 0) double overNoise) {

    /** Refuses what is missing or not a number. */
    public CandidateEvent {
        Require.components(CandidateEvent.class, metres, seconds, heightVolts, shape, overNoise);
    }

    /**
     * Returns which way the trace goes first.
     *
     * @return 1 up, −1 down
     */
    public int sign() {
        return heightVolts.value() < 0 ? -1 : 1;
    }

    /**
     * Returns the return loss as the trace shows it, loss on the way not taken out.
     *
     * @return −20 log10 |height| [dB]
     */
    public double apparentReturnLossDecibels() {
        return -20 * Math.log10(Math.abs(heightVolts.value()));
    }
}

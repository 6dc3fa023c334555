// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.instrument.Trace;

/**
 * What the kind that was flagged would have shown in place of what is there: in the size that comes nearest, or as high as
 * what is there where it goes the other way.
 *
 * @param flagged the kind that was flagged
 * @param event an event of that kind at the same place
 * @param trace the trace with it, without noise, at what was set
 * @param otherWay whether it first goes the other way than what is there
 * @param echo what it does to the trace at its first place
 * @param leftVolts largest difference that is left between that trace and the true one where the true event shows, both
 *     without noise [V]
 * @param leftAtMetres where on the trace that difference lies [m]
 * @param noiseVolts noise after averaging, root mean square [V]
 */
public record KindComparison(
        EventKind flagged,
        Event event,
        Trace trace,
        boolean otherWay,
        EventEcho echo,
        double leftVolts,
        double leftAtMetres,
        double noiseVolts) {

    /** Below it two traces can't be told apart. */
    private static final double TELLING_NOISES = 3;

    /**
     * Tells whether the two traces differ by enough to be told apart at what was set.
     *
     * @return whether the difference is at least three times the noise
     */
    public boolean canBeTold() {
        return leftVolts >= TELLING_NOISES * noiseVolts;
    }
}

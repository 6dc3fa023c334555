// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * What counts as a candidate event.
 *
 * @param falseAlarmsPerTrace how often a trace of nothing but noise may show one, 1e-9 to 1: a bound, reached where all
 *     forms of echo err apart
 * @param leastVolts smallest height that is listed [V], 0 to 1: what a sweep or a converter can't be trusted for
 * @param velocityUncertainty standard uncertainty of the set velocity over that of light, 0 to 0.5
 */
public record CandidateRules(
        @Between(least = 1e-9, most = 1) double falseAlarmsPerTrace,
        @Between(least = 0, most = 1) double leastVolts,
        @Between(least = 0, most = 0.5) double velocityUncertainty) {

    private static final double USUAL_FALSE_ALARMS = 0.01;
    private static final double USUAL_LEAST_VOLTS = 2e-4;
    private static final double USUAL_VELOCITY_UNCERTAINTY = 0.005;

    /** Refuses values out of bounds. */
    public CandidateRules {
        Require.components(CandidateRules.class, falseAlarmsPerTrace, leastVolts, velocityUncertainty);
    }

    /**
     * The rules where nobody asks for others: one false alarm of noise in a hundred traces, nothing smaller than 0.02 % of
     * the outgoing wave, a velocity known to 0.005 (common practice, no source).
     *
     * @return the rules
     */
    public static CandidateRules usual() {
        return new CandidateRules(USUAL_FALSE_ALARMS, USUAL_LEAST_VOLTS, USUAL_VELOCITY_UNCERTAINTY);
    }

    /**
     * Changes the smallest height.
     *
     * @param other smallest height that is listed [V], 0 to 1
     * @return rules alike but for it
     */
    public CandidateRules withLeastVolts(double other) {
        return new CandidateRules(falseAlarmsPerTrace, other, velocityUncertainty);
    }

    /**
     * Changes how well the velocity is known.
     *
     * @param other standard uncertainty of the set velocity over that of light, 0 to 0.5
     * @return rules alike but for it
     */
    public CandidateRules withVelocityUncertainty(double other) {
        return new CandidateRules(falseAlarmsPerTrace, leastVolts, other);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

/**
 * What can be said about a measured sweep before anyone reads a line from it: how far it reaches, what had to be added,
 * and whether a passive thing could have made it.
 *
 * @param frequencies how many frequencies were measured
 * @param lowestHertz lowest frequency measured [Hz]
 * @param highestHertz highest frequency measured [Hz]
 * @param spacingHertz distance of the even grid on which the response is held [Hz]; what comes back later than one over it
 *     folds back onto the record
 * @param resampled whether the measured frequencies were not multiples of one step, so that values between them were taken
 *     by cubic splines
 * @param addedPoints points of the even grid below the lowest frequency measured, 0 Hz among them; these were estimated
 * @param dcReflection reflection coefficient at 0 Hz
 * @param dcDoubt by how much that may be off; 0 where it was measured or given. Two ways of estimating it are weighed by
 *     their own doubts: a spline through the lowest points (what leaving out the lowest changes), and quiet in the last
 *     quarter of the period (half of what its two halves differ)
 * @param largestMagnitude largest |Γ| measured; above 1 no passive thing can have made it
 * @param largestAtHertz where that was [Hz]
 * @param pointsAboveOne how many measured points lie above 1
 * @param shareBeforeZero share of the impulse response's energy in the eighth of the period before zero time; a causal
 *     response has none there, so this is noise, an answer that comes later than the record, or a fault of calibration
 */
public record SweepReport(
        int frequencies,
        double lowestHertz,
        double highestHertz,
        double spacingHertz,
        boolean resampled,
        int addedPoints,
        double dcReflection,
        double dcDoubt,
        double largestMagnitude,
        double largestAtHertz,
        int pointsAboveOne,
        double shareBeforeZero) {

    /**
     * Returns whether a passive thing could have made the sweep.
     *
     * @param tolerance by how much |Γ| may pass 1, for errors of calibration
     * @return whether no point lies higher
     */
    public boolean isPassive(double tolerance) {
        return largestMagnitude <= 1 + tolerance;
    }

    /**
     * Returns whether the response begins when it may.
     *
     * @param tolerance share of the energy that may lie before zero time
     * @return whether no more does
     */
    public boolean isCausal(double tolerance) {
        return shareBeforeZero <= tolerance;
    }

    /**
     * Returns the longest time for which the sweep gives the reflection.
     *
     * @return time [s]
     */
    public double longestRecordSeconds() {
        return (1 - ImpulseResponse.SHARE_BEFORE_ZERO) / spacingHertz;
    }
}

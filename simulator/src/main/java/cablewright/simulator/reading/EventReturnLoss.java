// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * Return loss of one event, from the height of its echo.
 *
 * <p>Apparent: −20 log10 of the echo's peak over the outgoing wave; corrected for nothing. Corrected: less the loss of the
 * cable there and back, as far as it is known. Both tell the event as the pulse meets it: a pulse that is long against the
 * event cancels part of what the event's two ends send back, and dispersion that spreads an echo lowers its peak beyond the
 * loss at any one frequency.
 *
 * @param peak the largest departure from the line between the cursors, as a cursor
 * @param noiseVolts noise of the trace, root mean square [V], 0 or more
 * @param thereAndBackDecibels loss that is corrected for [dB], 0 or more
 */
public record EventReturnLoss(
        Cursor peak,
        @Between(least = 0) double noiseVolts,
        @Between(least = 0, most = 1000) double thereAndBackDecibels) {

    /** Peak over noise below which a return loss is only a bound (common practice, no source). */
    public static final double SURE_OVER_NOISE = 3;

    /** Checks the ranges. */
    public EventReturnLoss {
        Require.components(EventReturnLoss.class, peak, noiseVolts, thereAndBackDecibels);
    }

    /**
     * Returns the return loss as the trace shows it.
     *
     * @return −20 log10 |peak| [dB]; infinite where nothing stands out
     */
    public double apparentDecibels() {
        return -20 * Math.log10(Math.abs(peak.volts()));
    }

    /**
     * Returns the return loss at the event.
     *
     * @return the apparent one less the known loss there and back [dB]; below 0 where that loss was given too large, since
     *     no passive event sends back more than it gets
     */
    public double correctedDecibels() {
        return apparentDecibels() - thereAndBackDecibels;
    }

    /**
     * Returns whether the echo stands above the noise; where it does not, the return loss is at least the value given.
     *
     * @return whether the peak is at least {@value #SURE_OVER_NOISE} times the noise
     */
    public boolean isAboveNoise() {
        return Math.abs(peak.volts()) >= SURE_OVER_NOISE * noiseVolts;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;

/**
 * How long the outgoing wave, as the receiver sees it, covers what comes back: until it has sunk for good below three times
 * the noise, or below half of what it would cover, whichever is more.
 */
public final class BlindZone {

    private final double[] largestFromHere;
    private final double sampleSeconds;
    private final double noiseVolts;

    private BlindZone(Trace matched) {
        this.largestFromHere = new double[matched.count()];
        this.sampleSeconds = matched.sampleSeconds();
        this.noiseVolts = matched.noiseVolts();
        double largest = 0;
        for (int i = largestFromHere.length - 1; i >= 0; i--) {
            largest = Math.max(largest, Math.abs(matched.volts(i)));
            largestFromHere[i] = largest;
        }
    }

    /**
     * Measures the blind zone of an instrument at given settings.
     *
     * @param reflectometer the instrument
     * @param settings what is set on it
     * @return its blind zone
     */
    public static BlindZone of(Reflectometer reflectometer, Settings settings) {
        MatchedPort port = new MatchedPort(reflectometer.instrument().sourceOhms());
        return new BlindZone(reflectometer.withoutNoise(port, settings));
    }

    /**
     * Returns when the blind zone ends for an event.
     *
     * @param contrastVolts by how much the event changes the trace, without sign [V]
     * @return time since the start of the outgoing wave [s]; 0 where nothing is covered
     */
    public double endSeconds(double contrastVolts) {
        double cover = Math.max(
                VisibilityRules.MARGINAL_OVER_NOISE * noiseVolts, contrastVolts * VisibilityRules.MARGINAL_SHARE);
        int low = 0;
        int high = largestFromHere.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (largestFromHere[middle] > cover) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? 0 : (low - 1) * sampleSeconds;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.wave.Stimulus;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Evens a trace, so that bumps of the pulse's own length stand out of the noise: the mean of an odd number of samples that
 * take up a third of the stimulus' shortest edge, or of one sample where it has no more.
 *
 * <p>The receiver's noise, white through two equal poles x ← a x + (1 − a) w with a = e^(−Δt/τ), is like itself m samples
 * later by a^m (1 + m(1 − a²)/(1 + a²)); the mean over n samples has the mean of that over all their pairs as its variance.
 * A trace of M stretches that know nothing of each other has M² pairs of them at most; noise alone makes any pair differ by
 * more than √2 σ z with a probability of M² Q(z). z is chosen for one in a thousand. Two steps of the converter are the
 * least in any case.
 */
final class NoiseAveraging {

    private static final double SHARE_OF_EDGE = 1.0 / 3;
    private static final double FALSE_ALARMS = 1e-3;
    private static final double CONVERTER_STEPS = 2;

    private final int reach;
    private final double noiseVolts;
    private final double leastVolts;

    NoiseAveraging(Trace trace, Instrument instrument) {
        Stimulus stimulus = trace.settings().stimulus();
        int samples = (int) (stimulus.shortestEdgeSeconds() * SHARE_OF_EDGE / trace.sampleSeconds());
        this.reach = Math.max(0, (samples - 1) / 2);
        double step = trace.sampleSeconds() / instrument.poleSeconds();
        int n = 2 * reach + 1;
        double sum = n;
        for (int apart = 1; apart < n; apart++) {
            sum += 2 * (n - apart) * Math.exp(-apart * step) * (1 + apart * Math.tanh(step));
        }
        this.noiseVolts = trace.noiseVolts() * Math.sqrt(sum) / n;
        double stretches = Math.max(2, trace.count() / Math.max(n, 1 / step));
        double z = -new NormalDistribution().inverseCumulativeProbability(FALSE_ALARMS / (stretches * stretches));
        double converterStep = instrument.stepVoltsAfter(
                trace.settings().gainDecibels(), trace.settings().averages());
        this.leastVolts = Math.max(Math.sqrt(2) * z * noiseVolts, CONVERTER_STEPS * converterStep);
    }

    /** Noise that is left, root mean square. */
    double noiseVolts() {
        return noiseVolts;
    }

    /** By how much two places of the evened trace must differ to differ by more than noise. */
    double leastVolts() {
        return leastVolts;
    }

    double[] of(double[] volts) {
        double[] even = new double[volts.length];
        double sum = 0;
        int inside = 0;
        for (int i = -reach; i < volts.length + reach; i++) {
            if (i + reach < volts.length && i + reach >= 0) {
                sum += volts[i + reach];
                inside++;
            }
            if (i - reach - 1 >= 0) {
                sum -= volts[i - reach - 1];
                inside--;
            }
            if (i >= 0 && i < volts.length) {
                even[i] = sum / inside;
            }
        }
        return even;
    }
}

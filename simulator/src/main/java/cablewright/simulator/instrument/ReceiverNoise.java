// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import java.util.SplittableRandom;

/**
 * Noise of the receiver: white noise through the receiver's two poles, of the instrument's root mean square in its
 * bandwidth, made smaller by averaging with √n.
 *
 * <p>Two equal poles of x ← a x + (1 − a) w have a variance of (1 − a)⁴(1 + a²)/(1 − a²)³ times that of w, with
 * a = e^(−Δt/τ); it is divided out, so that the noise has its stated size at any distance of samples.
 */
final class ReceiverNoise {

    private static final int WARM_UP = 64;

    private final Instrument instrument;
    private final SplittableRandom random;

    ReceiverNoise(Instrument instrument, long seed) {
        this.instrument = instrument;
        this.random = new SplittableRandom(seed);
    }

    void addTo(double[] volts, double sampleSeconds, int averages) {
        double a = Math.exp(-sampleSeconds / instrument.poleSeconds());
        double variance = Math.pow(1 - a, 4) * (1 + a * a) / Math.pow(1 - a * a, 3);
        double size = instrument.noiseVoltsAfter(averages) / Math.sqrt(variance);
        double first = 0;
        double second = 0;
        int warmUp = WARM_UP + (int) Math.min(10_000, 20 / (1 - a));
        for (int i = -warmUp; i < volts.length; i++) {
            first = a * first + (1 - a) * random.nextGaussian();
            second = a * second + (1 - a) * first;
            if (i >= 0) {
                volts[i] += size * second;
            }
        }
    }
}

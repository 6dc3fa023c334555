// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import java.util.SplittableRandom;

/** Adds interference to an averaged record, each source with a phase or a time that the instrument knows nothing of. */
final class Ingress {

    private static final int MOST_IMPULSES = 10_000;

    private final Instrument instrument;
    private final SplittableRandom random;

    Ingress(Instrument instrument, long seed) {
        this.instrument = instrument;
        this.random = new SplittableRandom(seed ^ 0x5DEECE66DL);
    }

    void addTo(double[] volts, double sampleSeconds, int averages) {
        Interference interference = instrument.interference();
        addCarrier(volts, sampleSeconds, averages, interference.humVolts(), interference.humHertz());
        addCarrier(volts, sampleSeconds, averages, interference.radioVolts(), interference.radioHertz());
        if (interference.impulsesPerSecond() > 0 && interference.impulseVolts() != 0) {
            addImpulses(volts, sampleSeconds, averages);
        }
    }

    /** The mean of n carriers of random phase, through the receiver's two poles. */
    private void addCarrier(double[] volts, double sampleSeconds, int averages, double peak, double hertz) {
        if (peak == 0) {
            return;
        }
        double inPhase = 0;
        double across = 0;
        for (int n = 0; n < averages; n++) {
            double phase = 2 * Math.PI * random.nextDouble();
            inPhase += Math.cos(phase);
            across += Math.sin(phase);
        }
        double w = 2 * Math.PI * hertz;
        double passed = 1 / (1 + w * w * instrument.poleSeconds() * instrument.poleSeconds());
        double scale = peak * passed / averages;
        for (int i = 0; i < volts.length; i++) {
            double angle = w * i * sampleSeconds;
            volts[i] += scale * (inPhase * Math.cos(angle) - across * Math.sin(angle));
        }
    }

    /** Impulses through the receiver: (t/τ) e^(1 − t/τ), 1 at its top. */
    private void addImpulses(double[] volts, double sampleSeconds, int averages) {
        double expected = instrument.interference().impulsesPerSecond() * volts.length * sampleSeconds * averages;
        double tau = instrument.poleSeconds();
        double height = instrument.interference().impulseVolts() / averages;
        for (int n = poisson(expected); n > 0; n--) {
            double at = random.nextDouble() * volts.length;
            int last = (int) Math.min(volts.length, at + 40 * tau / sampleSeconds + 2);
            for (int i = (int) Math.ceil(at); i < last; i++) {
                double u = (i - at) * sampleSeconds / tau;
                volts[i] += height * u * Math.exp(1 - u);
            }
        }
    }

    private int poisson(double mean) {
        if (mean > 50) {
            double drawn = mean + Math.sqrt(mean) * random.nextGaussian();
            return (int) Math.max(0, Math.min(MOST_IMPULSES, Math.rint(drawn)));
        }
        double left = Math.exp(-mean);
        double product = random.nextDouble();
        int n = 0;
        while (product > left) {
            product *= random.nextDouble();
            n++;
        }
        return n;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

/**
 * The converter: clips, then rounds to its steps.
 *
 * <p>Where the noise of one record is at least half a step, it stirs the rounding so that the average of n records has
 * steps n times finer; below that, averaging does not help (Widrow &amp; Kollár, Quantization Noise, from memory).
 */
final class Converter {

    private final double clip;
    private final double step;

    Converter(Instrument instrument, double gainDecibels, int averages) {
        this.clip = instrument.clipVolts(gainDecibels);
        this.step = instrument.stepVoltsAfter(gainDecibels, averages);
    }

    void convert(double[] volts) {
        for (int i = 0; i < volts.length; i++) {
            volts[i] = Math.rint(Math.max(-clip, Math.min(clip, volts[i])) / step) * step;
        }
    }
}

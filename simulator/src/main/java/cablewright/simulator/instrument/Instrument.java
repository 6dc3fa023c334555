// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.PowerOfTwo;
import cablewright.simulator.check.Require;

/**
 * What an instrument is, whatever is set on it. Voltages are relative to an outgoing wave of 1 V.
 *
 * @param sourceOhms resistance of its source, which is also what the line's reflections meet on their return [Ω]
 * @param bandwidthHertz bandwidth of its receiver at −3 dB [Hz]: two equal real poles, H = 1/(1 + sτ)² with
 *     τ = √(√2 − 1)/(2π f)
 * @param outgoingShare share of the outgoing wave that reaches the receiver, 0 to 1: 1 without a hybrid, less by the
 *     balance of one
 * @param recoveryShare share of its response that comes late, as a receiver recovers from the outgoing pulse, 0 to 0.2
 * @param recoverySeconds time constant of that late share, H = 1/(1 + s·recoverySeconds) [s]
 * @param noiseVolts noise of one record, root mean square in the receiver's bandwidth [V]
 * @param converterBits bits of its converter, 4 to 24
 * @param fullScaleVolts voltage at which the converter clips, either way, at 0 dB of gain [V]
 * @param samples how many samples a record has, a power of two
 * @param timebaseErrorFraction by how much its clock runs slow, so that distances show too short, −0.05 to 0.05
 * @param interference what else is on the line
 */
public record Instrument(
        @Between(least = 1, most = 10_000) double sourceOhms,
        @Between(least = 1e3, most = 1e12) double bandwidthHertz,
        @Between(least = 0, most = 1) double outgoingShare,
        @Between(least = 0, most = 0.2) double recoveryShare,
        @Between(least = 1e-12, most = 1) double recoverySeconds,
        @Between(least = 0, most = 1) double noiseVolts,
        @Between(least = 4, most = 24) int converterBits,
        @Between(least = 0.01, most = 100) double fullScaleVolts,
        @PowerOfTwo(least = 256, most = 65_536) int samples,
        @Between(least = -0.05, most = 0.05) double timebaseErrorFraction,
        Interference interference) {

    /** Checks the ranges. */
    public Instrument {
        Require.components(
                Instrument.class,
                sourceOhms,
                bandwidthHertz,
                outgoingShare,
                recoveryShare,
                recoverySeconds,
                noiseVolts,
                converterBits,
                fullScaleVolts,
                samples,
                timebaseErrorFraction,
                interference);
    }

    /**
     * Makes the instrument that lessons use where they name no other: 1 GHz, 0.4 % of noise in one record, 12 bits, no
     * hybrid, 0.2 % of late recovery over 40 ns. The figures are ours (common practice, no source).
     *
     * @param sourceOhms resistance of its source [Ω]
     * @return the instrument
     */
    public static Instrument usual(double sourceOhms) {
        return new Instrument(sourceOhms, 1e9, 1, 0.002, 40e-9, 0.004, 12, 1.25, 4096, 0, Interference.none());
    }

    /**
     * Makes the instrument that adds nothing of its own to what was measured: no noise, no late recovery, a bandwidth far above
     * any sweep, the finest converter.
     *
     * @param sourceOhms resistance of its source [Ω]
     * @param samples most samples of a record, a power of two
     * @return the instrument
     */
    public static Instrument asMeasured(double sourceOhms, int samples) {
        return new Instrument(sourceOhms, 1e12, 1, 0, 1e-9, 0, 24, 1.25, samples, 0, Interference.none());
    }

    /**
     * Returns the noise that averaging leaves.
     *
     * @param averages how many records are averaged
     * @return noise, root mean square [V]: that of one record over √averages
     */
    public double noiseVoltsAfter(int averages) {
        return noiseVolts / Math.sqrt(averages);
    }

    /**
     * Returns the voltage at which the converter clips.
     *
     * @param gainDecibels gain of the receiver [dB]
     * @return voltage at the port, either way [V]
     */
    public double clipVolts(double gainDecibels) {
        return fullScaleVolts * Math.pow(10, -gainDecibels / 20);
    }

    /**
     * Returns the step of the converter.
     *
     * @param gainDecibels gain of the receiver [dB]
     * @return step, referred to the port [V]
     */
    public double stepVolts(double gainDecibels) {
        return 2 * clipVolts(gainDecibels) / (1L << converterBits);
    }

    /**
     * Returns the step that averaging leaves.
     *
     * @param gainDecibels gain of the receiver [dB]
     * @param averages how many records are averaged
     * @return step, referred to the port [V]: n times finer where the noise of one record, half a step or more, stirs the
     *     rounding (Widrow &amp; Kollár, Quantization Noise, from memory); else unchanged
     */
    public double stepVoltsAfter(double gainDecibels, int averages) {
        double whole = stepVolts(gainDecibels);
        return noiseVolts >= whole / 2 ? whole / averages : whole;
    }

    /**
     * Puts other interference on the line.
     *
     * @param other the interference
     * @return an instrument alike but for it
     */
    public Instrument with(Interference other) {
        return new Instrument(
                sourceOhms,
                bandwidthHertz,
                outgoingShare,
                recoveryShare,
                recoverySeconds,
                noiseVolts,
                converterBits,
                fullScaleVolts,
                samples,
                timebaseErrorFraction,
                other);
    }

    /**
     * Changes how much of the outgoing wave the receiver sees.
     *
     * @param share 0 to 1: 0 where it listens to another pair than the one that is driven
     * @return an instrument alike but for it
     */
    public Instrument withOutgoingShare(double share) {
        return new Instrument(
                sourceOhms,
                bandwidthHertz,
                share,
                recoveryShare,
                recoverySeconds,
                noiseVolts,
                converterBits,
                fullScaleVolts,
                samples,
                timebaseErrorFraction,
                interference);
    }

    /**
     * Returns the time constant of each of the receiver's two poles.
     *
     * @return τ [s]
     */
    public double poleSeconds() {
        return Math.sqrt(Math.sqrt(2) - 1) / (2 * Math.PI * bandwidthHertz);
    }
}

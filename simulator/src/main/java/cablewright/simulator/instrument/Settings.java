// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import cablewright.simulator.check.Require;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.wave.Stimulus;

/**
 * What a person sets on the instrument.
 *
 * @param stimulus the outgoing wave
 * @param velocityFraction velocity of propagation by which times are shown as distances, over that of light, 0.05 to 1
 * @param rangeMetres distance shown, at that velocity [m], 0.1 to 200000
 * @param gainDecibels gain of the receiver [dB], 0 to 80; it also lowers the level at which the converter clips
 * @param averages how many records are averaged, 1 to 65536
 */
public record Settings(
        Stimulus stimulus,
        @SettableVelocity double velocityFraction,
        @SettableRange double rangeMetres,
        @SettableGain double gainDecibels,
        @SettableAverages int averages) {

    /** Most records that are averaged. */
    public static final int MOST_AVERAGES = 65_536;

    /** Refuses values that can't be set. */
    public Settings {
        Require.components(Settings.class, stimulus, velocityFraction, rangeMetres, gainDecibels, averages);
    }

    /**
     * Returns the time to a distance and back.
     *
     * @param metres distance [m]
     * @return time [s], at the set velocity
     */
    public double secondsThereAndBack(double metres) {
        return 2 * metres / (velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND);
    }

    /**
     * Returns the distance that a time there and back stands for.
     *
     * @param seconds time [s]
     * @return distance [m], at the set velocity
     */
    public double metresThereAndBack(double seconds) {
        return seconds * velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND / 2;
    }

    /**
     * Returns half of the length that the pulse takes up in the cable: how far apart two events must lie to show as two
     * (common practice, no source).
     *
     * @return half of the pulse's length, or of the rise's [m]
     */
    public double halfPulseMetres() {
        return metresThereAndBack(stimulus.resolutionSeconds());
    }

    /**
     * Changes the stimulus.
     *
     * @param other the other stimulus
     * @return settings alike but for it
     */
    public Settings withStimulus(Stimulus other) {
        return new Settings(other, velocityFraction, rangeMetres, gainDecibels, averages);
    }

    /**
     * Changes the velocity of propagation.
     *
     * @param other the other velocity, over that of light
     * @return settings alike but for it
     */
    public Settings withVelocityFraction(double other) {
        return new Settings(stimulus, other, rangeMetres, gainDecibels, averages);
    }

    /**
     * Changes the range.
     *
     * @param other the other range [m]
     * @return settings alike but for it
     */
    public Settings withRangeMetres(double other) {
        return new Settings(stimulus, velocityFraction, other, gainDecibels, averages);
    }

    /**
     * Changes the gain.
     *
     * @param other the other gain [dB]
     * @return settings alike but for it
     */
    public Settings withGainDecibels(double other) {
        return new Settings(stimulus, velocityFraction, rangeMetres, other, averages);
    }

    /**
     * Changes the averaging.
     *
     * @param other how many records are averaged
     * @return settings alike but for it
     */
    public Settings withAverages(int other) {
        return new Settings(stimulus, velocityFraction, rangeMetres, gainDecibels, other);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import cablewright.simulator.check.Require;
import cablewright.simulator.wave.Waveform;

/**
 * One record of an instrument: what it shows against time and distance, for an outgoing wave of 1 V. For a step the level
 * of the outgoing wave is taken off, so that 0 is a line that reflects nothing.
 */
public final class Trace {

    private final Settings settings;
    private final Waveform waveform;
    private final double zeroSeconds;
    private final double noiseVolts;
    private final double clipVolts;
    private final double stepVolts;

    /**
     * Puts a record together, for example one that was imported or smoothed.
     *
     * @param settings what was set
     * @param waveform the samples [V], for an outgoing wave of 1 V
     * @param zeroSeconds when the outgoing edge passes half height, after the first sample [s]
     * @param noiseVolts noise that is left, root mean square [V], 0 or more
     * @param clipVolts where the converter clips, either way [V], above 0; infinite where nothing clips
     * @param stepVolts step of the converter [V], 0 or more
     */
    public Trace(
            Settings settings,
            Waveform waveform,
            double zeroSeconds,
            double noiseVolts,
            double clipVolts,
            double stepVolts) {
        Require.between("zeroSeconds", zeroSeconds, -1, 1);
        Require.between("noiseVolts", noiseVolts, 0, Double.MAX_VALUE);
        Require.above("clipVolts", Math.min(clipVolts, Double.MAX_VALUE), 0);
        Require.between("stepVolts", stepVolts, 0, Double.MAX_VALUE);
        this.settings = settings;
        this.waveform = waveform;
        this.zeroSeconds = zeroSeconds;
        this.noiseVolts = noiseVolts;
        this.clipVolts = clipVolts;
        this.stepVolts = stepVolts;
    }

    public Settings settings() {
        return settings;
    }

    /**
     * Returns how many samples there are.
     *
     * @return number of samples
     */
    public int count() {
        return waveform.count();
    }

    /**
     * Returns a sample.
     *
     * @param index which, from 0
     * @return voltage [V], which is also the reflection over the outgoing wave
     */
    public double volts(int index) {
        return waveform.sample(index);
    }

    /**
     * Returns the value at a distance, on the straight line between samples.
     *
     * @param metres distance at the set velocity [m]
     * @return voltage [V]
     */
    public double voltsAt(double metres) {
        return waveform.at(zeroSeconds + settings.secondsThereAndBack(metres));
    }

    /**
     * Returns the distance of a sample.
     *
     * @param index which, from 0
     * @return distance at the set velocity [m], counted from where the outgoing edge is at half height; a few samples
     *     before it are negative
     */
    public double metres(int index) {
        return settings.metresThereAndBack(waveform.time(index) - zeroSeconds);
    }

    /**
     * Returns when a sample was taken.
     *
     * @param index which, from 0
     * @return time since the outgoing edge was at half height [s]
     */
    public double seconds(int index) {
        return waveform.time(index) - zeroSeconds;
    }

    /**
     * Returns the sample nearest to a distance.
     *
     * @param metres distance at the set velocity [m]
     * @return index, within the record
     */
    public int indexNear(double metres) {
        double place = (zeroSeconds + settings.secondsThereAndBack(metres)) / waveform.sampleSeconds();
        return (int) Math.max(0, Math.min(count() - 1, Math.round(place)));
    }

    public double sampleSeconds() {
        return waveform.sampleSeconds();
    }

    /**
     * Returns when the outgoing edge passes half height on this record: the zero of distance.
     *
     * @return time after the first sample [s]
     */
    public double zeroSeconds() {
        return zeroSeconds;
    }

    /**
     * Returns the noise that is left.
     *
     * @return root mean square [V]
     */
    public double noiseVolts() {
        return noiseVolts;
    }

    /**
     * Returns where the converter clips.
     *
     * @return voltage either way [V]
     */
    public double clipVolts() {
        return clipVolts;
    }

    public double stepVolts() {
        return stepVolts;
    }

    /**
     * Returns all samples.
     *
     * @return a fresh copy [V]
     */
    public double[] copyOfVolts() {
        return waveform.copyOfValues();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.Stimulus;
import java.util.List;

/**
 * A travelling wave, frame by frame: voltage and current at chosen places along a cable and its branches, at evenly spaced
 * times from 0 to a last one, for an outgoing wave of 1 V. All of it is worked out beforehand; a frame is a look-up.
 *
 * <p>At the port the voltage is that of {@link PortVoltage}. Elsewhere the frames are as exact as the
 * inversion: at least {@value FoldedInversion#SAMPLES_PER_EDGE} samples lie across the stimulus' shortest edge. Corners of
 * a stimulus that has them are rounded by one such sample. Immutable.
 */
public final class WaveFrames {

    /** Most frames. */
    public static final int MOST_FRAMES = 8192;

    /** Most frames times places. */
    public static final int MOST_VALUES = 2_000_000;

    private static final int FRAMES_PER_EDGE = 4;
    private static final int FEWEST_FRAMES = 64;
    private static final int USUAL_MOST_FRAMES = 1024;

    private final List<LinePlaces> tracks;
    private final double stepSeconds;
    private final double[][][] volts;
    private final double[][][] amperes;

    WaveFrames(List<LinePlaces> tracks, double stepSeconds, double[][][] volts, double[][][] amperes) {
        this.tracks = List.copyOf(tracks);
        this.stepSeconds = stepSeconds;
        this.volts = volts;
        this.amperes = amperes;
    }

    /**
     * Works out all frames.
     *
     * @param field the cable and the places
     * @param stimulus the outgoing wave
     * @param durationSeconds time of the last frame [s], above 0
     * @param frames how many frames, 2 to {@value #MOST_FRAMES}; times the places at most {@value #MOST_VALUES}
     * @return the frames
     * @throws IllegalArgumentException if that is too much for memory, or too long for such a short edge
     */
    public static WaveFrames of(LineField field, Stimulus stimulus, double durationSeconds, int frames) {
        if (frames < 2 || frames > MOST_FRAMES || (long) frames * field.places() > MOST_VALUES) {
            throw new IllegalArgumentException("frames is " + frames + " at " + field.places()
                    + " places; allowed is 2 to " + Math.min(MOST_FRAMES, MOST_VALUES / field.places())
                    + ": take fewer frames or fewer places");
        }
        if (!(durationSeconds > 0 && durationSeconds < 1)) {
            throw new IllegalArgumentException(
                    "durationSeconds is " + durationSeconds + "; it must be greater than 0 and below 1");
        }
        return new FoldedInversion(field, stimulus, durationSeconds / (frames - 1), frames).run();
    }

    /**
     * Proposes a number of frames between which nothing jumps.
     *
     * @param stimulus the outgoing wave
     * @param durationSeconds time of the last frame [s]
     * @return four frames in the time of the shortest edge, but not fewer than 64 nor more than 1024
     */
    public static int usualCount(Stimulus stimulus, double durationSeconds) {
        double wanted = FRAMES_PER_EDGE * durationSeconds / stimulus.shortestEdgeSeconds();
        return (int) Math.max(FEWEST_FRAMES, Math.min(USUAL_MOST_FRAMES, Math.ceil(wanted)));
    }

    public List<LinePlaces> tracks() {
        return tracks;
    }

    public int count() {
        return volts[0].length;
    }

    /**
     * Returns when a frame is.
     *
     * @param frame which, from 0
     * @return time since the outgoing wave began to leave [s]
     */
    public double seconds(int frame) {
        return frame * stepSeconds;
    }

    /**
     * Returns the frame nearest to a time.
     *
     * @param seconds time since the outgoing wave began to leave [s]
     * @return which frame; the first or last for a time outside
     */
    public int frameAt(double seconds) {
        return (int) Math.max(0, Math.min(count() - 1.0, Math.rint(seconds / stepSeconds)));
    }

    /**
     * Returns the voltage at one place of one frame.
     *
     * @param track which track, from 0
     * @param frame which frame, from 0
     * @param place which place of the track, from 0
     * @return voltage [V]
     */
    public double volts(int track, int frame, int place) {
        return volts[track][frame][place];
    }

    /**
     * Returns the current at one place of one frame, counted away from the port.
     *
     * @param track which track, from 0
     * @param frame which frame, from 0
     * @param place which place of the track, from 0
     * @return current [A]
     */
    public double amperes(int track, int frame, int place) {
        return amperes[track][frame][place];
    }

    /**
     * Returns the voltage at all places of a track in one frame.
     *
     * @param track which track, from 0
     * @param frame which frame, from 0
     * @return a fresh copy [V], one for each place
     */
    public double[] copyOfVolts(int track, int frame) {
        return volts[track][frame].clone();
    }

    /**
     * Returns the largest voltage of any place and frame, by which a drawing may be scaled.
     *
     * @return voltage, without sign [V]
     */
    public double largestVolts() {
        return largest(volts);
    }

    private static double largest(double[][][] values) {
        double largest = 0;
        for (double[][] track : values) {
            for (double[] frame : track) {
                for (double value : frame) {
                    largest = Math.max(largest, Math.abs(value));
                }
            }
        }
        return largest;
    }

    /**
     * Returns the grid on which frames of a given spacing are inverted: a period of at least twice all frames, so many
     * samples to a frame that the stimulus' shortest edge is resolved.
     */
    static ContourGrid grid(double stepSeconds, int frames, int framesInPeriod, double longestSampleSeconds) {
        double wanted = stepSeconds / longestSampleSeconds;
        long stride = 1;
        while (stride < wanted && stride < ContourGrid.MOST_SAMPLES) {
            stride *= 2;
        }
        if (stride * framesInPeriod > ContourGrid.MOST_SAMPLES) {
            throw new IllegalArgumentException("durationSeconds is " + stepSeconds * (frames - 1)
                    + "; with so short an edge that takes more than " + ContourGrid.MOST_SAMPLES
                    + " samples: choose a shorter time or a wider pulse");
        }
        double period = stepSeconds * framesInPeriod;
        return new ContourGrid(
                ContourGrid.DAMPING_TIMES_PERIOD / period, period, (int) Math.max(16, stride * framesInPeriod));
    }
}

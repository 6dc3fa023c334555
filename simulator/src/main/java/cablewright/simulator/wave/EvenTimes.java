// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;

/**
 * The exact port voltage at times that somebody else chose: evenly spaced from 0 to a last one. The grid of the inversion
 * is laid so that its samples fall on those times; nothing is interpolated.
 *
 * <p>Held against the lattice of a lossless line with a mismatched source, the error is at most 2e-9 of the outgoing wave,
 * for every stimulus, with the {@value #FINE_SAMPLES_PER_EDGE} or more samples across the shortest edge that are taken
 * wherever they fit. Only within some samples of a corner of an echo is it larger, and only on a line without loss, which
 * leaves corners sharp: at most 1e-6 of that echo with 500 samples or more across the edge, where corners are set right
 * ({@link Corners}), and up to 3e-4 of it for the half-sine with 128.
 * The launch, what comes back at once, is exact at its corners too.
 *
 * @param outgoing the outgoing wave [V] at the chosen times
 * @param reflected the wave that came back [V] at the chosen times
 * @param samplesPerEdge how many samples of the inversion's grid lie across the stimulus' shortest edge
 */
public record EvenTimes(Waveform outgoing, Waveform reflected, double samplesPerEdge) {

    /** Samples across the stimulus' shortest edge, wherever the grid stays affordable. */
    public static final int FINE_SAMPLES_PER_EDGE = 128;

    private static final int FINEST_SAMPLES_PER_EDGE = 8 * FINE_SAMPLES_PER_EDGE;
    private static final double LAUNCH_DAMPINGS = 1000;
    private static final double MOST_DAMPING = 9e14;
    private static final int LEAST_SAMPLES_PER_EDGE = 20;
    private static final int AFFORDABLE_SAMPLES = 1 << 20;

    /**
     * Computes what is at a port.
     *
     * @param port the port
     * @param stimulus the outgoing wave
     * @param lastSeconds the last time [s], above 0
     * @param count how many times, 2 or more
     * @return outgoing and reflected voltage at count times from 0 to the last
     * @throws IllegalArgumentException if the last time is too late for such a short edge
     */
    public static EvenTimes of(PortResponse port, Stimulus stimulus, double lastSeconds, int count) {
        if (count < 2 || !(lastSeconds > 0)) {
            throw new IllegalArgumentException("there are " + count + " times up to " + lastSeconds
                    + " s; at least 2 times and a last one above 0 are needed");
        }
        double edge = stimulus.shortestEdgeSeconds();
        double step = lastSeconds / (count - 1);
        int perEdge = FINEST_SAMPLES_PER_EDGE;
        while (perEdge > LEAST_SAMPLES_PER_EDGE && samples(count, stride(step, edge / perEdge)) > AFFORDABLE_SAMPLES) {
            perEdge = Math.max(LEAST_SAMPLES_PER_EDGE, perEdge / 2);
        }
        long stride = stride(step, edge / perEdge);
        long samples = samples(count, stride);
        if (samples > ContourGrid.MOST_SAMPLES) {
            throw new IllegalArgumentException("a record of " + lastSeconds + " s at " + count
                    + " times, with an edge of " + edge + " s, takes more than " + ContourGrid.MOST_SAMPLES
                    + " samples; choose a shorter range, a wider pulse or fewer points");
        }
        double period = samples * (step / stride);
        ContourGrid grid = new ContourGrid(ContourGrid.DAMPING_TIMES_PERIOD / period, period, (int) samples);
        double launch = launch(port, stimulus);
        Waveform later = later(grid, port, stimulus, launch);
        double samplesPerEdge = edge / grid.sampleSeconds();
        Corners corners = new Corners(later);
        boolean fine = samplesPerEdge >= Corners.LEAST_SAMPLES_PER_EDGE;
        double[] outgoing = new double[count];
        double[] reflected = new double[count];
        for (int i = 0; i < count; i++) {
            outgoing[i] = stimulus.at(i * step);
            int at = i * (int) stride;
            reflected[i] = launch * outgoing[i] + (fine ? corners.at(at) : later.sample(at));
        }
        return new EvenTimes(new Waveform(step, outgoing), new Waveform(step, reflected), samplesPerEdge);
    }

    /**
     * What comes back at once, Γ at a real s so great that nothing later is left of it. It is added in closed form, so
     * that the corners of the stimulus stay corners; what is left to invert has smaller ones.
     */
    private static double launch(PortResponse port, Stimulus stimulus) {
        if (port.nativeGrid().isPresent()) {
            return 0;
        }
        double damping = Math.min(MOST_DAMPING, LAUNCH_DAMPINGS / stimulus.shortestEdgeSeconds());
        ContourGrid far = new ContourGrid(damping, ContourGrid.DAMPING_TIMES_PERIOD / damping, 16);
        return port.reflection(far, 1).re(0);
    }

    private static Waveform later(ContourGrid grid, PortResponse port, Stimulus stimulus, double launch) {
        ComplexArray sent = PortVoltage.spectrum(grid, stimulus);
        ComplexArray back = port.reflection(grid, sent.count(), stimulus.shortestEdgeSeconds());
        double[] re = new double[sent.count()];
        double[] im = new double[sent.count()];
        for (int k = 0; k < re.length; k++) {
            double lateRe = back.re(k) - launch;
            re[k] = sent.re(k) * lateRe - sent.im(k) * back.im(k);
            im[k] = sent.re(k) * back.im(k) + sent.im(k) * lateRe;
        }
        return Inversion.invert(grid, ComplexArray.takingOver(re, im));
    }

    private static long stride(double step, double longestSample) {
        return (long) Math.max(1, Math.min(ContourGrid.MOST_SAMPLES, Math.ceil(step / longestSample)));
    }

    /** The power of two whose first half holds all times. */
    private static long samples(int count, long stride) {
        long least = 2 * ((count - 1L) * stride + 1);
        return Math.max(16, Long.highestOneBit(least - 1) << 1);
    }
}

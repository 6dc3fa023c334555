// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import java.util.Arrays;

/**
 * The exact voltage at a port for an outgoing wave of 1 V: the stimulus, known in closed form, plus the wave that comes
 * back, inverted from Γ(s) F(s).
 *
 * @param outgoing the outgoing wave [V]
 * @param reflected the wave that came back [V], same samples
 */
public record PortVoltage(Waveform outgoing, Waveform reflected) {

    /** Samples across the stimulus' shortest edge where exactness is the aim. */
    public static final int FINE_SAMPLES_PER_EDGE = 64;

    private static final double NOTHING = 1e-18;

    /**
     * Computes what is at a port.
     *
     * @param port the port
     * @param stimulus the outgoing wave
     * @param recordSeconds how long to look [s]
     * @param samplesPerEdge samples across the stimulus' shortest edge, at least 4
     * @return outgoing and reflected voltage from t = 0 to at least the end of the record
     * @throws IllegalArgumentException if the record is too long for such a short edge
     */
    public static PortVoltage of(PortResponse port, Stimulus stimulus, double recordSeconds, int samplesPerEdge) {
        ContourGrid grid =
                ContourGrid.forRecord(recordSeconds, stimulus.shortestEdgeSeconds() / Math.max(4, samplesPerEdge));
        return on(grid, port, stimulus);
    }

    /**
     * Computes what is at a port on a given grid.
     *
     * @param grid the grid
     * @param port the port
     * @param stimulus the outgoing wave
     * @return outgoing and reflected voltage from t = 0 to half of the grid's period
     */
    public static PortVoltage on(ContourGrid grid, PortResponse port, Stimulus stimulus) {
        ComplexArray sent = spectrum(grid, stimulus);
        ComplexArray back = port.reflection(grid, sent.count(), stimulus.shortestEdgeSeconds());
        Waveform reflected = Inversion.invert(grid, sent.times(back));
        double[] outgoing = new double[reflected.count()];
        for (int m = 0; m < outgoing.length; m++) {
            outgoing[m] = stimulus.at(reflected.time(m));
        }
        return new PortVoltage(new Waveform(grid.sampleSeconds(), outgoing), reflected);
    }

    /**
     * Computes the spectrum of a stimulus, up to where nothing is left of it.
     *
     * @param grid the grid
     * @param stimulus the stimulus
     * @return F at the first frequencies of the grid
     */
    public static ComplexArray spectrum(ContourGrid grid, Stimulus stimulus) {
        int most = grid.frequencies() - 1;
        double[] re = new double[most];
        double[] im = new double[most];
        double[] out = new double[2];
        double largest = 0;
        int needed = 0;
        for (int k = 0; k < most; k++) {
            stimulus.transform(grid.dampingPerSecond(), k * grid.spacingRadiansPerSecond(), out);
            re[k] = out[0];
            im[k] = out[1];
            double size = Math.abs(out[0]) + Math.abs(out[1]);
            largest = Math.max(largest, size);
            if (size > NOTHING * largest) {
                needed = k + 1;
            }
        }
        return ComplexArray.takingOver(Arrays.copyOf(re, needed), Arrays.copyOf(im, needed));
    }
}

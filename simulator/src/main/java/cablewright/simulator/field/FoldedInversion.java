// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.kernel.FourierTransform;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The inversion of many functions of which only every n-th sample is wanted.
 *
 * <p>With n = s·n' samples of which every s-th is kept, Σ_k X_k e^(2πjk·sm/n) = Σ_b (Σ_i X_(b + i n')) e^(2πjbm/n'): the
 * spectrum is folded onto n' bins, and a transform of n' points gives exactly the samples that are kept. Voltage and current
 * of a place are real, so one complex transform serves both. Work is shared by bins and then by places, each bin summed in
 * the same order whatever the number of threads.
 */
final class FoldedInversion {

    /** Samples across the stimulus' shortest edge. */
    static final int SAMPLES_PER_EDGE = 32;

    private static final int BINS_AT_ONCE = 256;

    private final LineField field;
    private final Stimulus stimulus;
    private final double stepSeconds;
    private final int frames;
    private final int bins;
    private final ContourGrid grid;
    private final ComplexArray sent;
    private final Frequencies points;
    private final double[][] voltRe;
    private final double[][] voltIm;
    private final double[][] ampereRe;
    private final double[][] ampereIm;

    FoldedInversion(LineField field, Stimulus stimulus, double stepSeconds, int frames) {
        this.field = field;
        this.stimulus = stimulus;
        this.stepSeconds = stepSeconds;
        this.frames = frames;
        this.bins = Math.max(16, Integer.highestOneBit(2 * frames - 1) << 1);
        this.grid = WaveFrames.grid(stepSeconds, frames, bins, stimulus.shortestEdgeSeconds() / SAMPLES_PER_EDGE);
        this.sent = PortVoltage.spectrum(grid, stimulus);
        this.points = grid.points();
        this.voltRe = new double[field.places()][bins];
        this.voltIm = new double[field.places()][bins];
        this.ampereRe = new double[field.places()][bins];
        this.ampereIm = new double[field.places()][bins];
    }

    WaveFrames run() {
        LineField.Solver solver = field.upTo(grid.topHertz());
        int width = Math.min(BINS_AT_ONCE, bins);
        IntStream.range(0, bins / width).parallel().forEach(task -> fold(solver, task * width, width));
        double[][] volts = new double[field.places()][frames];
        double[][] amperes = new double[field.places()][frames];
        IntStream.range(0, field.places()).parallel().forEach(place -> invert(place, volts[place], amperes[place]));
        for (int place : solver.atPort()) {
            addOutgoing(volts[place], amperes[place]);
        }
        return new WaveFrames(field.tracks(), stepSeconds, byFrame(volts), byFrame(amperes));
    }

    private void fold(LineField.Solver solver, int firstBin, int width) {
        for (int from = firstBin; from < sent.count(); from += bins) {
            int to = Math.min(sent.count(), from + width);
            FieldValues values = solver.at(points.slice(from, to));
            for (int place = 0; place < field.places(); place++) {
                boolean port = solver.atPort().contains(place);
                double outgoing = port ? 1 : 0;
                add(voltRe[place], voltIm[place], firstBin, from, values.volts(place), outgoing);
                add(
                        ampereRe[place],
                        ampereIm[place],
                        firstBin,
                        from,
                        values.amperes(place),
                        outgoing / field.sourceOhms());
            }
        }
    }

    private void add(double[] re, double[] im, int bin, int from, ComplexBlock values, double known) {
        int half = grid.samples() / 2;
        for (int i = 0; i < values.count(); i++) {
            int k = from + i;
            double weight = k == 0 ? 0.5 : Inversion.taper((double) k / half);
            double vRe = values.re(i) - known;
            double vIm = values.im(i);
            re[bin + i] += weight * (sent.re(k) * vRe - sent.im(k) * vIm);
            im[bin + i] += weight * (sent.re(k) * vIm + sent.im(k) * vRe);
        }
    }

    /** Each bin and the conjugate of its mirror image make a real function; j times the second goes beside the first. */
    private void invert(int place, double[] volts, double[] amperes) {
        double[] data = new double[2 * bins];
        for (int b = 0; b < bins; b++) {
            int mirror = (bins - b) % bins;
            double vRe = voltRe[place][b] + voltRe[place][mirror];
            double vIm = voltIm[place][b] - voltIm[place][mirror];
            double aRe = ampereRe[place][b] + ampereRe[place][mirror];
            double aIm = ampereIm[place][b] - ampereIm[place][mirror];
            data[2 * b] = vRe - aIm;
            data[2 * b + 1] = vIm + aRe;
        }
        FourierTransform.ofLength(bins).invert(data);
        double scale = bins / grid.periodSeconds();
        for (int m = 0; m < frames; m++) {
            double size = scale * Math.exp(grid.dampingPerSecond() * m * stepSeconds);
            volts[m] = size * data[2 * m];
            amperes[m] = size * data[2 * m + 1];
        }
    }

    /** What leaves the port is known exactly and was left out of the inversion. */
    private void addOutgoing(double[] volts, double[] amperes) {
        for (int m = 0; m < frames; m++) {
            double outgoing = stimulus.at(m * stepSeconds);
            volts[m] += outgoing;
            amperes[m] += outgoing / field.sourceOhms();
        }
    }

    private double[][][] byFrame(double[][] byPlace) {
        List<LinePlaces> tracks = field.tracks();
        double[][][] turned = new double[tracks.size()][frames][];
        int first = 0;
        for (int t = 0; t < tracks.size(); t++) {
            int places = tracks.get(t).metres().size();
            for (int m = 0; m < frames; m++) {
                double[] row = new double[places];
                for (int p = 0; p < places; p++) {
                    row[p] = byPlace[first + p][m];
                }
                turned[t][m] = row;
            }
            first += places;
        }
        return turned;
    }
}

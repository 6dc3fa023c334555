// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.FourierTransform;
import cablewright.simulator.line.ContourGrid;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * What an even sweep answers to an impulse: h_n at t_n = n/(N Δf), by inverse FFT of Γ tapered from half of the sweep's top
 * up (1, then cos² down to 0). The last eighth of the period is taken for what came before zero time: a causal response has
 * nothing there but the taper's own ripple close to zero, so all but that is dropped, and its share of the energy reported.
 *
 * <p>Points that were not measured, 0 Hz first, are then moved to where the last quarter of the period is quietest, by least
 * squares: an error there would lift the whole record. From Γ(s) = Σ h_n e^(−s t_n) the response follows anywhere to the
 * right of s = jω.
 */
final class ImpulseResponse {

    /** Share of the period that counts as before zero time. */
    static final double SHARE_BEFORE_ZERO = 0.125;

    private static final int RIPPLE_SAMPLES = 96;
    private static final int MOST_MOVED = 24;
    private static final double HOLD = 1e-4;

    private final double stepHertz;
    private final double[] samples;
    private final double shareBeforeZero;

    private ImpulseResponse(double stepHertz, double[] samples, double shareBeforeZero) {
        this.stepHertz = stepHertz;
        this.samples = samples;
        this.shareBeforeZero = shareBeforeZero;
    }

    double shareBeforeZero() {
        return shareBeforeZero;
    }

    /**
     * Moves the points that were not measured towards where the end of the period is quietest: all the way where that is
     * surer than the spline which gave them, by the share of its weight 1/doubt² where it is not.
     *
     * @return by how much the value at 0 Hz may be off
     */
    static double settleAdded(EvenSweep sweep) {
        int added = sweep.added();
        if (added == 0 || added > MOST_MOVED) {
            return sweep.doubtOfZero();
        }
        double[] re = sweep.re().clone();
        double[] im = sweep.im().clone();
        quieten(sweep);
        double bySpline = sweep.doubtOfZero();
        double byQuiet = doubtOfZero(sweep);
        double both = Math.hypot(bySpline, byQuiet);
        double weight = both == 0 ? 1 : bySpline * bySpline / (both * both);
        for (int k = 0; k < added; k++) {
            sweep.re()[k] = re[k] + weight * (sweep.re()[k] - re[k]);
            sweep.im()[k] = im[k] + weight * (sweep.im()[k] - im[k]);
        }
        return both == 0 ? 0 : bySpline * byQuiet / both;
    }

    private static void quieten(EvenSweep sweep) {
        int added = sweep.added();
        double[] h = transformed(sweep.re(), sweep.im());
        int n = h.length;
        int unknowns = 2 * added - 1;
        DMatrixRMaj normal = new DMatrixRMaj(unknowns, unknowns);
        DMatrixRMaj right = new DMatrixRMaj(unknowns, 1);
        double[] basis = new double[unknowns];
        for (int i = n - n / 4; i < n - ripple(n); i++) {
            fillBasis(basis, i, n);
            for (int a = 0; a < unknowns; a++) {
                right.add(a, 0, -basis[a] * h[i]);
                for (int b = 0; b < unknowns; b++) {
                    normal.add(a, b, basis[a] * basis[b]);
                }
            }
        }
        double hold = HOLD * normal.get(0, 0);
        for (int a = 0; a < unknowns; a++) {
            normal.add(a, a, a == 0 && added == 1 ? 0 : hold);
        }
        DMatrixRMaj moved = new DMatrixRMaj(unknowns, 1);
        if (CommonOps_DDRM.solve(normal, right, moved)) {
            sweep.re()[0] += moved.get(0, 0);
            for (int k = 1; k < added; k++) {
                sweep.re()[k] += moved.get(2 * k - 1, 0);
                sweep.im()[k] += moved.get(2 * k, 0);
            }
        }
    }

    /**
     * By how much the two halves of the quiet quarter disagree on the value at 0 Hz, which lifts all samples alike: half of
     * the difference.
     */
    private static double doubtOfZero(EvenSweep sweep) {
        double[] h = transformed(sweep.re(), sweep.im());
        int n = h.length;
        int from = n - n / 4;
        int to = n - ripple(n);
        int middle = (from + to) / 2;
        return n * Math.abs(mean(h, from, middle) - mean(h, middle, to)) / 2;
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }

    /** What one unit of each unknown adds to sample i: 0 Hz, then real and imaginary part of each point above it. */
    private static void fillBasis(double[] basis, int i, int n) {
        basis[0] = 1.0 / n;
        for (int a = 1; a < basis.length; a += 2) {
            double angle = 2 * Math.PI * ((a + 1) / 2) * i / n;
            basis[a] = 2 * Math.cos(angle) / n;
            basis[a + 1] = -2 * Math.sin(angle) / n;
        }
    }

    static ImpulseResponse of(EvenSweep sweep) {
        double[] h = transformed(sweep.re(), sweep.im());
        int n = h.length;
        int from = n - (int) (n * SHARE_BEFORE_ZERO);
        double all = 0;
        double dropped = 0;
        for (int i = 0; i < n; i++) {
            all += h[i] * h[i];
            if (i >= from && i < n - ripple(n)) {
                dropped += h[i] * h[i];
                h[i] = 0;
            }
        }
        return new ImpulseResponse(sweep.stepHertz(), h, all == 0 ? 0 : dropped / all);
    }

    private static int ripple(int n) {
        return Math.min(RIPPLE_SAMPLES, n / 16);
    }

    private static double[] transformed(double[] re, double[] im) {
        int half = Math.max(16, Integer.highestOneBit(2 * re.length - 1));
        int n = 2 * half;
        double[] tapered = new double[re.length];
        double[] beside = new double[re.length];
        for (int k = 0; k < re.length; k++) {
            double taper = taper((double) k / re.length);
            tapered[k] = taper * re[k];
            beside[k] = taper * im[k];
        }
        return FourierTransform.ofLength(n).realSamples(ComplexArray.takingOver(tapered, beside));
    }

    private static double taper(double share) {
        if (share <= 0.5) {
            return 1;
        }
        double down = Math.cos(Math.PI * (share - 0.5));
        return down * down;
    }

    /** The grid on which the response is given: twice the period, so that all of it can be shown. */
    ContourGrid grid() {
        double period = 2 / stepHertz;
        return new ContourGrid(ContourGrid.DAMPING_TIMES_PERIOD / period, period, 2 * samples.length);
    }

    /** Γ(s) = Σ h_n e^(−s t_n) on the grid, ripple at negative times included. */
    ComplexArray onGrid() {
        ContourGrid grid = grid();
        int n = samples.length;
        double decay = grid.dampingPerSecond() * grid.sampleSeconds();
        double[] damped = new double[2 * n];
        for (int i = 0; i < n; i++) {
            boolean before = i >= n - ripple(n);
            damped[before ? i + n : i] = samples[i] * Math.exp(-decay * (before ? i - n : i));
        }
        return FourierTransform.ofLength(2 * n).spectrum(damped);
    }
}

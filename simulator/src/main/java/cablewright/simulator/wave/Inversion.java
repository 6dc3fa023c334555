// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.FourierTransform;
import cablewright.simulator.line.ContourGrid;

/**
 * From values on a damped contour to a function of time:
 * f(t_m) = (e^(c t_m)/T) Σ_k F(c + jkΔω) σ_k e^(jkΔω t_m), a sum over both signs of k by inverse FFT.
 *
 * <p>σ is a taper: 1 up to half of the band, then cos² down to 0 at its top. Only the first half of the period is
 * returned; there, what folds back from after the period is smaller than e^(−cT) = 4e-11 of itself. Source of the method:
 * Moreno &amp; Ramirez, IEEE Trans. Power Delivery 23(4), 2599–2609 (2008).
 */
public final class Inversion {

    private Inversion() {}

    /**
     * Inverts a transform of a real function.
     *
     * @param grid the grid
     * @param values the transform at the first frequencies of the grid [unit · s]; those that are left out count as zero
     * @return the function from t = 0 to half of the period
     */
    public static Waveform invert(ContourGrid grid, ComplexArray values) {
        int n = grid.samples();
        int half = n / 2;
        int count = Math.min(values.count(), half);
        double[] re = new double[count];
        double[] im = new double[count];
        for (int k = 0; k < count; k++) {
            double taper = taper((double) k / half);
            re[k] = taper * values.re(k);
            im[k] = taper * values.im(k);
        }
        double[] samples = FourierTransform.ofLength(n).realSamples(ComplexArray.takingOver(re, im));
        double[] kept = new double[half];
        double scale = n / grid.periodSeconds();
        for (int m = 0; m < half; m++) {
            kept[m] = scale * Math.exp(grid.dampingPerSecond() * m * grid.sampleSeconds()) * samples[m];
        }
        return new Waveform(grid.sampleSeconds(), kept);
    }

    /** Weighs a frequency, 0 to 1 of the band: 1 in its lower half, cos² falling to 0 in its upper half. */
    public static double taper(double share) {
        if (share <= 0.5) {
            return 1;
        }
        double down = Math.cos(Math.PI * (share - 0.5));
        return down * down;
    }
}

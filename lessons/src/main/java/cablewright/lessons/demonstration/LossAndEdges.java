// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.explanation.visibility.DispersionDelay;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.Waveform;
import org.apache.commons.math3.special.Erf;

/**
 * What distance does to an edge. Where the loss is skin effect alone, H = e^(−sT) e^(−Kl√s) and a step becomes
 * erfc(√(τ₀/t)), τ₀ = (αl)²/(4πf), t counted from its arrival (Wigington &amp; Nahman, Proc. IRE 45, 166 (1957), from memory).
 * Half height comes after 4.396 τ₀; 10 to 90 % takes 125.9 τ₀.
 *
 * @param type the cable
 * @param wayMetres how far the wave has come, there and back for an echo [m], 0.1 to 20000
 * @param atHertz where the cable's attenuation is taken for the law [Hz], 1e5 to 1e10
 */
public record LossAndEdges(
        CableType type,
        @Between(least = 0.1, most = 20_000) double wayMetres,
        @Between(least = 1e5, most = 1e10) double atHertz) {

    private static final double HALF_TAUS = 4.39621867664;
    private static final double TENTH_TAUS = 0.7392230189;
    private static final double NINE_TENTHS_TAUS = 126.6562354;
    private static final int POINTS = 601;
    private static final double SHOWN_HALF_TIMES = 30;
    private static final double RISES_PER_HALF_TIME = 20;
    private static final double LEAST_RISE_SECONDS = 2e-12;
    private static final int SAMPLES_PER_RISE = 16;

    /** Checks the ranges. */
    public LossAndEdges {
        Require.components(LossAndEdges.class, type, wayMetres, atHertz);
    }

    /**
     * What the demonstration shows. Times are counted from the arrival of the very first.
     *
     * @param decibels attenuation of the way at the law's frequency [dB]
     * @param tauSeconds τ₀ [s]
     * @param halfSeconds when the law reaches half height [s]
     * @param riseSeconds 10–90 % rise of the law [s]
     * @param law the law [share of the step against s]
     * @param exact what the cable itself does to a short step [share against s]
     * @param exactHalfSeconds when the cable itself lets half of the step through [s]
     */
    public record Outcome(
            double decibels,
            double tauSeconds,
            double halfSeconds,
            double riseSeconds,
            Curve law,
            Curve exact,
            double exactHalfSeconds) {}

    /**
     * Returns what is through of a step.
     *
     * @param seconds time since its first arrival [s]
     * @param tauSeconds τ₀ [s]
     * @return erfc(√(τ₀/t)), 0 to 1
     */
    public static double stepAt(double seconds, double tauSeconds) {
        return seconds <= 0 ? 0 : Erf.erfc(Math.sqrt(tauSeconds / seconds));
    }

    /**
     * Computes what the demonstration shows.
     *
     * @return curves and figures
     */
    public Outcome outcome() {
        RoundTrip trip = new RoundTrip(type, atHertz);
        double nepers = trip.attenuation(atHertz) * wayMetres;
        double tau = DispersionDelay.seconds(nepers, atHertz);
        double half = HALF_TAUS * tau;
        double shown = SHOWN_HALF_TIMES * half;
        Curve exact = exact(half, shown);
        return new Outcome(
                nepers * PhysicalConstants.DECIBEL_PER_NEPER,
                tau,
                half,
                (NINE_TENTHS_TAUS - TENTH_TAUS) * tau,
                Curve.of(0, shown, POINTS, seconds -> stepAt(seconds, tau)),
                exact,
                halfOf(exact));
    }

    /** A Gaussian step, short against the half time, through the cable itself. */
    private Curve exact(double half, double shown) {
        GaussianStep step = new GaussianStep(Math.max(LEAST_RISE_SECONDS, half / RISES_PER_HALF_TIME));
        double longest = step.riseSeconds() / SAMPLES_PER_RISE;
        RoundTrip trip = new RoundTrip(type, 1 / longest);
        double before = step.halfHeightSeconds();
        double late = wayMetres * trip.slowness() - trip.firstSeconds(wayMetres / 2);
        ContourGrid grid = ContourGrid.forRecord(shown + before + late, longest);
        ComplexArray sent = PortVoltage.spectrum(grid, step);
        ComplexArray way = trip.decay(grid, trip.propagation(grid, sent.count()), wayMetres / 2);
        double[] re = new double[sent.count()];
        double[] im = new double[sent.count()];
        for (int k = 0; k < re.length; k++) {
            re[k] = sent.re(k) * way.re(k) - sent.im(k) * way.im(k);
            im[k] = sent.re(k) * way.im(k) + sent.im(k) * way.re(k);
        }
        Waveform through = Inversion.invert(grid, ComplexArray.takingOver(re, im));
        return Curve.of(0, shown, POINTS, seconds -> through.at(seconds + before + late));
    }

    private static double halfOf(Curve rising) {
        for (int i = 1; i < rising.count(); i++) {
            if (rising.y(i) >= 0.5) {
                double share = (0.5 - rising.y(i - 1)) / (rising.y(i) - rising.y(i - 1));
                return rising.x(i - 1) + share * (rising.x(i) - rising.x(i - 1));
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the sites on a sharpened trace at which more than noise stands.
 *
 * <p>A pair of filters is matched to what a short event leaves there: a Gaussian, of what it resists, and the slope of one,
 * of what it stores (Turin, An introduction to matched filters, IRE Trans. Inform. Theory 6, 311–329 (1960)). The line that
 * fits best in the window is taken out of both, so that the slow tail of a strong echo, the droop of a long step and the
 * rise that loss makes don't count. The pair's strength is the root of the sum of their squares, each over its noise.
 *
 * <p>Two things a site must pass. Noise: the threshold at which noise alone passes as often as the rules allow. Clutter: a
 * share of each stronger site nearby, for what the filters, the loss of the line and the form of a real event leave beside
 * it. The shares were chosen on 400 generated cables that the measurement does not use.
 */
final class SiteSearch {

    private static final double WINDOW_WIDTHS = 1.3;
    private static final double[] APART_WIDTHS = {1.15, 1.4, 2.1};
    private static final double[] CLUTTER_SHARES = {1, 0.45, 0.1};
    private static final double FAR_SHARE = 0.03;
    private static final double FAR_FROM_WIDTHS = 4;
    private static final double FARTHEST_WIDTHS = 12;
    /** By how much more there is behind a site than before it. */
    private static final double BEHIND = 2;

    private static final double OUTGOING_WIDTHS = 2.5;
    private static final double OUTGOING_SHARE = 0.03;
    private static final double OUTGOING_FAR_SHARE = 0.006;
    /** Share of samples taken as free of echoes, and the quantile of |N(0, 1)| there. */
    private static final double QUIET_SHARE = 0.4;

    private static final double QUIET_QUANTILE = 0.5244;

    private final SharpTrace sharp;
    private final int zero;
    private final int blind;
    private final double samplesPerWidth;
    private final double[] strength;
    private final double least;
    private final double outgoingStrength;

    /** One site: where, and by how much it stands above the noise. */
    record Site(int index, double overNoise) {}

    /**
     * Prepares a search.
     *
     * @param sharp the sharpened trace
     * @param sampleSeconds distance of its samples [s]
     * @param widthSeconds width of the pulse, or rise of the step [s]
     * @param zero sample at which the outgoing wave was sent
     * @param blind first sample that may show a site
     * @param noiseVolts noise of a sample before it was sharpened [V]
     * @param rules what counts
     */
    SiteSearch(
            SharpTrace sharp,
            double sampleSeconds,
            double widthSeconds,
            int zero,
            int blind,
            double noiseVolts,
            CandidateRules rules) {
        this.sharp = sharp;
        this.zero = zero;
        this.blind = blind;
        this.samplesPerWidth = widthSeconds / sampleSeconds;
        this.strength = new double[sharp.count()];
        double[][] kernels = kernels(sampleSeconds, widthSeconds);
        double whole = 0;
        double likeness = 1;
        for (int k = 0; k < kernels.length; k++) {
            double[] noise = sharp.noise(kernels[k]);
            double[] through = sharp.through(kernels[k]);
            double unit = Math.max(noiseVolts * noise[0], quiet(through));
            whole = k == 0 ? sharp.gain(kernels[k]) / unit : whole;
            likeness = Math.min(likeness, noise[1]);
            for (int i = 0; i < strength.length; i++) {
                strength[i] = Math.hypot(strength[i], through[i] / unit);
            }
        }
        this.outgoingStrength = whole;
        double floor = rules.leastVolts() * whole;
        this.least = Math.max(floor, timesNoise(likeness, rules.falseAlarmsPerTrace()));
    }

    /** The Gaussian and its slope, less the line, over the window. */
    private double[][] kernels(double sampleSeconds, double widthSeconds) {
        int half = (int) Math.ceil(WINDOW_WIDTHS * widthSeconds / sampleSeconds);
        double[][] kernels = new double[2][2 * half + 1];
        for (int j = -half; j <= half; j++) {
            double x = j * sampleSeconds / sharp.sigmaSeconds();
            kernels[0][j + half] = Math.exp(-x * x / 2);
            kernels[1][j + half] = -x * Math.exp(-x * x / 2);
        }
        double square = half * (half + 1.0) * (2.0 * half + 1) / 3;
        for (double[] kernel : kernels) {
            double mean = 0;
            double slope = 0;
            for (int j = -half; j <= half; j++) {
                mean += kernel[j + half] / kernel.length;
                slope += kernel[j + half] * j / square;
            }
            for (int j = -half; j <= half; j++) {
                kernel[j + half] -= mean + slope * j;
            }
        }
        return kernels;
    }

    /**
     * How many times the noise the pair must give, so that noise alone passes so often. The envelope R of two like Gaussian
     * processes of unit noise rises above r at a mean rate of √(λ/2π) r e^(−r²/2), λ the mean square slope of one of them
     * (Rice, Mathematical analysis of random noise, Bell Syst. Tech. J. 23, 282–332 (1944) and 24, 46–156 (1945), sec. 3.8
     * from memory); between samples of likeness ρ, √λ is arccos(ρ) a sample. The faster of the two is taken for both, so
     * the rate is a bound.
     */
    private double timesNoise(double likeness, double falseAlarms) {
        double slopes = (strength.length - blind) * Math.acos(Math.max(-1, likeness)) / Math.sqrt(2 * Math.PI);
        double times = 3;
        for (int i = 0; i < 30; i++) {
            times = Math.sqrt(2 * Math.log(Math.max(2, slopes * times / falseAlarms)));
        }
        return times;
    }

    /** What the smaller of a filter's values tell of the noise in it, where most of a trace is free of echoes. */
    private double quiet(double[] values) {
        double[] sizes = Arrays.copyOfRange(values, Math.min(blind, values.length), values.length);
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = Math.abs(sizes[i]);
        }
        Arrays.sort(sizes);
        return sizes.length == 0 ? 0 : sizes[(int) (QUIET_SHARE * sizes.length)] / QUIET_QUANTILE;
    }

    /** The sites, the plainest first. */
    List<Site> sites() {
        int last = strength.length - 1 - (int) Math.ceil(WINDOW_WIDTHS * samplesPerWidth / 2);
        List<Site> peaks = new ArrayList<>();
        for (int i = Math.max(1, blind); i < last; i++) {
            boolean peak = strength[i] >= strength[i - 1] && strength[i] > strength[i + 1];
            if (peak && strength[i] > least && !isUnderOutgoing(i)) {
                peaks.add(new Site(i, strength[i]));
            }
        }
        peaks.sort(Comparator.comparingDouble(site -> -site.overNoise()));
        List<Site> kept = new ArrayList<>();
        for (Site peak : peaks) {
            if (kept.stream().noneMatch(strong -> hides(strong, peak))) {
                kept.add(peak);
            }
        }
        return kept;
    }

    /** Whether what the outgoing wave leaves behind may be all there is. */
    private boolean isUnderOutgoing(int index) {
        double apart = (index - zero) / samplesPerWidth;
        double share =
                apart < OUTGOING_WIDTHS ? OUTGOING_SHARE : OUTGOING_FAR_SHARE * Math.min(1, FAR_FROM_WIDTHS / apart);
        return apart < FARTHEST_WIDTHS && strength[index] < share * outgoingStrength;
    }

    private boolean hides(Site strong, Site weak) {
        double apart = (weak.index() - strong.index()) / samplesPerWidth;
        double distance = Math.abs(apart);
        double share = weak.overNoise() / strong.overNoise();
        double behind = apart > 0 ? BEHIND : 1;
        if (distance < APART_WIDTHS[0]) {
            return share <= CLUTTER_SHARES[0];
        }
        if (distance < APART_WIDTHS[1]) {
            return share < CLUTTER_SHARES[1];
        }
        if (distance < APART_WIDTHS[2]) {
            return share < CLUTTER_SHARES[2] * behind;
        }
        return distance < FARTHEST_WIDTHS && share < FAR_SHARE * behind * Math.min(1, FAR_FROM_WIDTHS / distance);
    }
}

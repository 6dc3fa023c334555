// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.course;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;

/**
 * A slider beneath a live figure, bound to one number.
 *
 * @param label what it changes, one line
 * @param target the number: a path into the figure's cable such as {@code /cable/events/press/depthFraction}, or a setting as a
 *     study names it, such as {@code pulse_s}
 * @param least value at its left end, in SI units
 * @param most value at its right end, in SI units
 * @param logarithmic whether it moves by factors
 */
public record FigureSlider(
        @Text String label,
        @Text String target,
        @Between(least = -FigureSlider.FARTHEST, most = FigureSlider.FARTHEST) double least,
        @Between(least = -FigureSlider.FARTHEST, most = FigureSlider.FARTHEST) double most,
        boolean logarithmic) {

    static final double FARTHEST = 1e12;

    /** Checks the ranges. */
    public FigureSlider {
        Require.components(FigureSlider.class, label, target, least, most, logarithmic);
        Require.that(most > least, "most", most, "above least, which is " + least);
        Require.that(!logarithmic || least > 0, "least", least, "above 0 for a slider that moves by factors");
    }

    /**
     * Returns the value at a share of the way.
     *
     * @param share 0 at the left end, 1 at the right
     * @return the value, in SI units
     */
    public double at(double share) {
        return logarithmic ? least * Math.pow(most / least, share) : least + share * (most - least);
    }

    /**
     * Returns how far along a value lies.
     *
     * @param value the value, in SI units
     * @return its share of the way, kept within 0 to 1
     */
    public double shareOf(double value) {
        double share =
                logarithmic ? Math.log(value / least) / Math.log(most / least) : (value - least) / (most - least);
        return Math.max(0, Math.min(1, share));
    }
}

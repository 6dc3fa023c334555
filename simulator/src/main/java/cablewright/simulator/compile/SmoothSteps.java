// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.compile;

import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.crosssection.CrossSection;

/**
 * A condition's profile in equal steps, put right to second order.
 *
 * <p>Taken at their middles, steps of length h weigh the reflection at phase constant β by sin(βh)/(βh), which is 1 − (βh)²/6: each
 * step of ln Z holds the mean of its slope over h. With δ² ln Z, the second difference of the middles, ln Z − δ² ln Z/24 takes that off,
 * and what is left is of fourth order, 7(βh)⁴/360. Where the slope changes by κ at once, as at an end or in the middle of a profile, the
 * trapezoidal rule errs by (h²/12)κ (Euler and Maclaurin), of which that is one half; κh/24 in the steps beside it is the other. Beyond the
 * ends the profile is taken as its mirror image, so that a sharp end stays sharp. Derived here; the tests hold it to finer steps and
 * to the exponential taper.
 */
final class SmoothSteps {

    private static final double SHARE = 1.0 / 24;

    private final LineCondition condition;
    private final int count;
    private final double[] logarithms;

    /** Takes the impedances at the middles of the steps, on the cable's own cross-section. */
    SmoothSteps(LineCondition condition, CrossSection section, int count) {
        this.condition = condition;
        this.count = count;
        this.logarithms = new double[count];
        for (int i = 0; i < count; i++) {
            logarithms[i] =
                    Math.log(CableCompiler.applied(condition, section, depth(i)).impedanceOhms());
        }
    }

    private double depth(int step) {
        return condition.depthAt((step + 0.5) / count);
    }

    /** Applies the condition as it is in the step around a place, 0 to 1 of its stretch. */
    CrossSection applyTo(CrossSection section, double along) {
        int step = Math.max(0, Math.min(count - 1, (int) (along * count)));
        CrossSection middle = CableCompiler.applied(condition, section, depth(step));
        double second = at(step - 1) - 2 * at(step) + at(step + 1) + kink(step);
        return second == 0 ? middle : middle.scaled(Math.exp(-SHARE * second));
    }

    private double at(int step) {
        return logarithms[Math.max(0, Math.min(count - 1, step))];
    }

    /** What a change of slope beside a step adds: all of it at an end, half of it on either side of the middle. */
    private double kink(int step) {
        if (step == 0) {
            return slopeAt(0, 1);
        }
        if (step == count - 1) {
            return -slopeAt(count - 1, -1);
        }
        boolean isBesideMiddle = step == count / 2 - 1 || step == count / 2;
        return isBesideMiddle ? (slopeAt(count / 2, 1) - slopeAt(count / 2 - 1, -1)) / 2 : 0;
    }

    /** The slope at the nearer edge of a step, a quadratic through it and the two beyond it [per step]. */
    private double slopeAt(int step, int direction) {
        double first = at(step + direction) - at(step);
        double next = at(step + 2 * direction) - at(step + direction);
        return direction * (2 * first - next);
    }
}

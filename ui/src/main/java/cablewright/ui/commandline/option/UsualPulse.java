// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.simulator.material.PhysicalConstants;

/** The width of pulse that suits a range: about a two-hundredth of the time there and back, 1, 2 or 5 times a power of ten. */
public final class UsualPulse {

    private static final double SHARE = 1.0 / 200;
    private static final double[] STEPS = {1, 2, 5};

    private UsualPulse() {}

    public static double seconds(double velocityFraction, double rangeMetres) {
        double rough = SHARE * 2 * rangeMetres / (velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND);
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double best = power;
        for (double step : STEPS) {
            if (step * power <= rough * (1 + 1e-9)) {
                best = step * power;
            }
        }
        double picoseconds = Math.max(1, Math.rint(best * 1e12));
        return Math.min(1e-2, picoseconds / 1e12);
    }
}

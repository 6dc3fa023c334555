// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.port.SimulatedPort;

/** Return loss of a cable over a band. */
final class LineSweep {

    private static final double LEAST = 1e-6;

    private LineSweep() {}

    /** −20 log₁₀ |Γ| [dB], at most 120, at the places of x [Hz]. */
    static Curve returnLoss(Cable cable, double referenceOhms, double... hertz) {
        ComplexArray reflection = new SimulatedPort(cable, referenceOhms).sweep(hertz);
        double[] decibels = new double[hertz.length];
        for (int k = 0; k < hertz.length; k++) {
            decibels[k] = -20 * Math.log10(Math.max(LEAST, reflection.magnitude(k)));
        }
        return new Curve(hertz, decibels);
    }

    static double[] evenly(double from, double to, int count) {
        double[] hertz = new double[count];
        for (int k = 0; k < count; k++) {
            hertz[k] = from + (to - from) * k / (count - 1);
        }
        return hertz;
    }
}

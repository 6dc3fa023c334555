// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.kernel.ComplexBlock;

/**
 * Impedance of a lumped element as a fraction n/d, both finite at every frequency but zero: an open has d = 0, a short
 * n = 0.
 *
 * <ul>
 *   <li>in series: (R + sL) + 1/(sC), with sC above and below where there is a C;
 *   <li>in parallel: 1/(1/R + 1/(sL) + sC), with R and sL above and below where there are an R and an L.
 * </ul>
 */
public final class ImpedanceFraction {

    private ImpedanceFraction() {}

    /**
     * Works out the fraction at a block of frequencies.
     *
     * @param part the element
     * @param s the frequencies [rad/s]
     * @param n receives n
     * @param d receives d
     */
    public static void of(Lumped part, ComplexBlock s, ComplexBlock n, ComplexBlock d) {
        double henries = part.inductanceHenries().orElse(0);
        double farads = part.capacitanceFarads().orElse(0);
        if (part.joined() == Lumped.Joined.SERIES) {
            n.setScaled(s, henries).plus(part.resistanceOhms().orElse(0));
            if (part.capacitanceFarads().isEmpty()) {
                d.fill(1);
            } else {
                d.setScaled(s, farads);
                n.times(d).plus(1);
            }
            return;
        }
        boolean resists = part.resistanceOhms().isPresent();
        double top = part.resistanceOhms().orElse(1);
        d.setScaled(s, farads * top).plus(resists ? 1 : 0);
        if (part.inductanceHenries().isEmpty()) {
            n.fill(top);
        } else {
            n.setScaled(s, henries);
            d.times(n).plus(top);
            n.times(top);
        }
    }
}

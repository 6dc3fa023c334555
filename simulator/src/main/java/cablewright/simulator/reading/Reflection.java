// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * One reflection as coefficient, return loss and impedance.
 *
 * <p>ρ = (Z − Z0)/(Z + Z0); return loss = −20 log10 |ρ| (IEC 60050-726, definitions; numbers from memory).
 *
 * @param coefficient reflection coefficient ρ, −1 to 1
 */
public record Reflection(@Between(least = -1, most = 1) double coefficient) {

    /** Refuses a coefficient that no passive place can have. */
    public Reflection {
        Require.components(Reflection.class, coefficient);
    }

    /**
     * Returns the reflection of an impedance on a line.
     *
     * @param impedanceOhms the impedance that ends the line [Ω], 0 or more; infinite for an open
     * @param lineOhms impedance of the line [Ω], above 0
     * @return the reflection
     */
    public static Reflection ofImpedance(double impedanceOhms, double lineOhms) {
        if (!(impedanceOhms >= 0) || !(lineOhms > 0)) {
            throw new IllegalArgumentException("impedanceOhms is " + impedanceOhms + " and lineOhms is " + lineOhms
                    + "; the first must be 0 or more, the second greater than 0");
        }
        if (Double.isInfinite(impedanceOhms)) {
            return new Reflection(1);
        }
        return new Reflection((impedanceOhms - lineOhms) / (impedanceOhms + lineOhms));
    }

    /**
     * Returns the impedance that would reflect so at the end of a line.
     *
     * @param lineOhms impedance of the line [Ω]
     * @return Z0 (1 + ρ)/(1 − ρ) [Ω]; infinite for ρ = 1
     */
    public double impedanceOhms(double lineOhms) {
        return lineOhms * (1 + coefficient) / (1 - coefficient);
    }

    /**
     * Returns the return loss.
     *
     * @return −20 log10 |ρ| [dB]; infinite where nothing is reflected
     */
    public double returnLossDecibels() {
        return -20 * Math.log10(Math.abs(coefficient));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import java.util.OptionalDouble;

/**
 * A resistance, inductance and capacitance of no length, joined in series or in parallel.
 *
 * <p>In series Z = R + sL + 1/(sC), in parallel Y = 1/R + 1/(sL) + sC; a part that is absent is a wire in series and
 * nothing in parallel. Passive by construction: no value may be negative.
 *
 * @param joined how the parts are joined
 * @param resistanceOhms resistance [Ω], 0 to 1e12
 * @param inductanceHenries inductance [H], 0 to 1e3
 * @param capacitanceFarads capacitance [F], above 0 to 1
 */
public record Lumped(
        Joined joined,
        @Between(least = 0, most = 1e12) @Usual(from = 0.1, to = 100_000, byFactors = true)
                OptionalDouble resistanceOhms,
        @Between(least = 0, most = 1e3) @Usual(from = 1e-9, to = 0.1, byFactors = true)
                OptionalDouble inductanceHenries,
        @Above(floor = 0, most = 1) @Usual(from = 1e-13, to = 1e-6, byFactors = true)
                OptionalDouble capacitanceFarads) {

    /** How the parts of an element are joined. */
    public enum Joined {
        /** One after the other. */
        SERIES,
        /** Side by side. */
        PARALLEL
    }

    /** Refuses an element with no part, or with a part out of bounds. */
    public Lumped {
        Require.components(Lumped.class, joined, resistanceOhms, inductanceHenries, capacitanceFarads);
        if (resistanceOhms.isEmpty() && inductanceHenries.isEmpty() && capacitanceFarads.isEmpty()) {
            throw new IllegalArgumentException(
                    "an element has no part; give resistanceOhms, inductanceHenries or capacitanceFarads");
        }
    }

    /**
     * Makes a resistor.
     *
     * @param ohms resistance [Ω]
     * @return the element
     */
    public static Lumped resistor(double ohms) {
        return new Lumped(Joined.SERIES, OptionalDouble.of(ohms), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Makes an inductor.
     *
     * @param henries inductance [H]
     * @return the element
     */
    public static Lumped inductor(double henries) {
        return new Lumped(Joined.SERIES, OptionalDouble.empty(), OptionalDouble.of(henries), OptionalDouble.empty());
    }

    /**
     * Makes a capacitor.
     *
     * @param farads capacitance [F]
     * @return the element
     */
    public static Lumped capacitor(double farads) {
        return new Lumped(Joined.SERIES, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(farads));
    }

    /**
     * Makes a resistor bridged by a capacitor.
     *
     * @param ohms resistance [Ω]
     * @param farads capacitance [F]
     * @return the element
     */
    public static Lumped resistorAcrossCapacitor(double ohms, double farads) {
        return new Lumped(Joined.PARALLEL, OptionalDouble.of(ohms), OptionalDouble.empty(), OptionalDouble.of(farads));
    }
}

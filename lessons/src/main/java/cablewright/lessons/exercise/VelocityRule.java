// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.SettableVelocity;
import java.util.OptionalDouble;

/**
 * What a trainee may set as velocity of propagation, and what the brief says of it.
 *
 * @param leastFraction least that may be set, over the speed of light, 0.05 to 1
 * @param mostFraction most that may be set; equal to the least where it is fixed
 * @param statedFraction what the brief states; absent where the trainee has to find it
 */
public record VelocityRule(
        @SettableVelocity double leastFraction,
        @SettableVelocity double mostFraction,
        @SettableVelocity OptionalDouble statedFraction) {

    /** Refuses a range that can't be, and a stated velocity that can't be set. */
    public VelocityRule {
        Require.components(VelocityRule.class, leastFraction, mostFraction, statedFraction);
        Require.between("mostFraction", mostFraction, leastFraction, 1);
        statedFraction.ifPresent(stated -> Require.between("statedFraction", stated, leastFraction, mostFraction));
    }

    /**
     * Makes a rule for a velocity that the brief states and nobody can change.
     *
     * @param fraction velocity over the speed of light
     * @return the rule
     */
    public static VelocityRule fixed(double fraction) {
        return new VelocityRule(fraction, fraction, OptionalDouble.of(fraction));
    }

    /**
     * Returns whether the velocity can be changed.
     *
     * @return whether there is only one
     */
    public boolean isFixed() {
        return leastFraction == mostFraction;
    }

    /**
     * Returns whether a velocity may be set.
     *
     * @param fraction velocity over the speed of light
     * @return whether it lies within the range
     */
    public boolean allows(double fraction) {
        return fraction >= leastFraction && fraction <= mostFraction;
    }
}

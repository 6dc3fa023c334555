// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

import cablewright.simulator.cable.Event;
import cablewright.simulator.crosssection.CrossSection;

/**
 * A condition of the line over a stretch: a function from cross-section to cross-section, with a depth that varies along
 * the stretch.
 */
public sealed interface LineCondition extends Event
        permits Pinch, Kink, WaterIngress, OffCentreCore, GradualDamage, SpreadPair, Split, ImpedanceVariation, Heat {

    /**
     * Returns how long the stretch is.
     *
     * @return length [m], above 0
     */
    double lengthMetres();

    @Override
    LineCondition movedTo(double newStartMetres);

    @Override
    default double endMetres() {
        return startMetres() + lengthMetres();
    }

    @Override
    default LineCondition mirrored(double cableLengthMetres) {
        return movedTo(mirroredStartMetres(cableLengthMetres));
    }

    /**
     * Returns where the stretch begins, measured from the far end.
     *
     * @param cableLengthMetres length of the cable [m]
     * @return distance from the far end to the nearer end of the stretch [m], never below 0
     */
    default double mirroredStartMetres(double cableLengthMetres) {
        return Math.max(0, cableLengthMetres - endMetres());
    }

    /**
     * Returns what the condition is like at a place of its stretch.
     *
     * @param along place, 0 at the start of the stretch and 1 at its end
     * @return depth, in the condition's own measure; two places of equal depth have equal cross-sections
     */
    double depthAt(double along);

    /**
     * Changes a cross-section as the condition does at a given depth.
     *
     * @param section the cross-section before
     * @param depth what {@link #depthAt} gave
     * @return the cross-section after
     * @throws IllegalArgumentException if this can't be done to such a cross-section
     */
    CrossSection applyTo(CrossSection section, double depth);

    /**
     * Returns the longest step in which the condition's depth may be taken as constant.
     *
     * @return step [m]; infinite where the depth is the same all along
     */
    double longestStepMetres();

    /**
     * Returns the place of this condition in the order of composition: geometry first, dielectric after it, heat last.
     *
     * @return a small number; lower is applied first
     */
    int compositionOrder();

    /**
     * Calls the visitor's method for this kind of condition.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(ConditionVisitor<T> visitor);
}

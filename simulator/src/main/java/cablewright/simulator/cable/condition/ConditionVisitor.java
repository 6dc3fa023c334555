// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

/**
 * One method for each condition of the line, so that a new one breaks the build until all who treat them treat it.
 *
 * @param <T> what each method returns
 */
public interface ConditionVisitor<T> {

    /** Visits a pinch. @param event the event @return the visitor's answer */
    T pinch(Pinch event);

    /** Visits a kink. @param event the event @return the visitor's answer */
    T kink(Kink event);

    /** Visits a soaked length. @param event the event @return the visitor's answer */
    T waterIngress(WaterIngress event);

    /** Visits an off-centre core. @param event the event @return the visitor's answer */
    T offCentreCore(OffCentreCore event);

    /** Visits gradual damage. @param event the event @return the visitor's answer */
    T gradualDamage(GradualDamage event);

    /** Visits a spread pair. @param event the event @return the visitor's answer */
    T spreadPair(SpreadPair event);

    /** Visits a split. @param event the event @return the visitor's answer */
    T split(Split event);

    /** Visits an uneven stretch. @param event the event @return the visitor's answer */
    T impedanceVariation(ImpedanceVariation event);

    /** Visits a warm stretch. @param event the event @return the visitor's answer */
    T heat(Heat event);
}

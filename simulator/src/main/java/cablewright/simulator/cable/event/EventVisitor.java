// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.event;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.condition.ConditionVisitor;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.hardware.ComponentVisitor;
import cablewright.simulator.cable.hardware.InlineComponent;

/**
 * One method for each kind of event of both families.
 *
 * @param <T> what each method returns
 */
public interface EventVisitor<T> extends ComponentVisitor<T>, ConditionVisitor<T> {

    /**
     * Calls the method for this kind of event.
     *
     * @param event any event
     * @return what the method returned
     */
    default T visit(Event event) {
        if (event instanceof InlineComponent component) {
            return component.accept(this);
        }
        if (event instanceof LineCondition condition) {
            return condition.accept(this);
        }
        throw new IllegalArgumentException("event \"" + event.id() + "\" belongs to neither family of events");
    }
}

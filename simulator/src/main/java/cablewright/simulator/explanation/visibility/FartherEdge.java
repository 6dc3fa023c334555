// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.condition.ConditionVisitor;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.Heat;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import java.util.List;
import java.util.Optional;

/**
 * Takes the farther edge of a stretch away and leaves the nearer one: the condition goes on to the end of the cable. What the
 * trace of the true cable differs from that of this one is what the farther edge sends back, with nothing of the tail that
 * the nearer edge leaves there.
 */
public final class FartherEdge implements ConditionVisitor<LineCondition> {

    private final double length;

    private FartherEdge(double length) {
        this.length = length;
    }

    /**
     * Takes the farther edge of an event away.
     *
     * @param tested the cable as it is seen from the end tested
     * @param eventId the event
     * @return the cable on which the event goes on; empty where the event is no stretch, or can't go on
     */
    public static Optional<Cable> takenFrom(Cable tested, String eventId) {
        Event event = tested.event(eventId).orElse(null);
        if (!(event instanceof LineCondition condition)) {
            return Optional.empty();
        }
        try {
            Event longer = condition.accept(new FartherEdge(tested.lengthMetres() - event.startMetres()));
            List<Event> events = tested.events().stream()
                    .map(one -> one.id().equals(eventId) ? longer : one)
                    .toList();
            return Optional.of(tested.withEvents(events));
        } catch (IllegalArgumentException e) {
            // Another event is in its way, or its kind can't be so long.
            return Optional.empty();
        }
    }

    @Override
    public LineCondition pinch(Pinch event) {
        return new Pinch(event.id(), event.startMetres(), length, event.depthFraction(), event.profile());
    }

    @Override
    public LineCondition kink(Kink event) {
        return event;
    }

    @Override
    public LineCondition waterIngress(WaterIngress event) {
        return new WaterIngress(
                event.id(),
                event.startMetres(),
                length,
                event.entryMetres(),
                event.picture(),
                event.volumeFraction(),
                event.water(),
                event.dryingEdgeMetres());
    }

    @Override
    public LineCondition offCentreCore(OffCentreCore event) {
        return new OffCentreCore(
                event.id(), event.startMetres(), length, event.eccentricity(), event.profile(), event.pitchMetres());
    }

    @Override
    public LineCondition gradualDamage(GradualDamage event) {
        return new GradualDamage(event.id(), event.startMetres(), length, event.relativeImpedance(), event.profile());
    }

    @Override
    public LineCondition spreadPair(SpreadPair event) {
        return new SpreadPair(event.id(), event.startMetres(), length, event.spacingFactor(), event.profile());
    }

    @Override
    public LineCondition split(Split event) {
        return new Split(
                event.id(),
                event.startMetres(),
                length,
                event.shape(),
                event.putRight(),
                event.neighbourNearEnd(),
                event.neighbourFarEnd());
    }

    @Override
    public LineCondition impedanceVariation(ImpedanceVariation event) {
        return event;
    }

    @Override
    public LineCondition heat(Heat event) {
        return new Heat(event.id(), event.startMetres(), length, event.celsius(), event.restCelsius(), event.profile());
    }
}

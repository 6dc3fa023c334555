// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;

/**
 * One conductor of a pair broken, the other whole.
 *
 * <p>Seen by a balanced instrument the break is a series capacitance, that of the gap and of the two wire ends to
 * whatever surrounds the pair: the fast edge partly passes, the slow part meets an open. The capacitance is
 * given, since it depends on what lies around the pair (common practice, no source).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param bridgingCapacitanceFarads capacitance across the break as the pair sees it [F], above 0 to 1e-6
 */
public record OneSideOpen(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Above(floor = 0, most = 1e-6) @Usual(from = 1e-12, to = 10e-9, byFactors = true)
                double bridgingCapacitanceFarads)
        implements InlineComponent {

    /** Checks the ranges. */
    public OneSideOpen {
        Require.components(OneSideOpen.class, id, positionMetres, bridgingCapacitanceFarads);
    }

    @Override
    public EventKind kind() {
        return EventKind.ONE_SIDE_OPEN;
    }

    @Override
    public OneSideOpen movedTo(double newPositionMetres) {
        return new OneSideOpen(id, newPositionMetres, bridgingCapacitanceFarads);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.oneSideOpen(this);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import java.util.OptionalDouble;

/**
 * A conductor broken through (open), or all but through (partial open).
 *
 * <p>A full open sends everything back and hides what lies beyond; a partial one reflects ρ = R/(R + 2 Z0).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param seriesResistanceOhms what still bridges the break [Ω], above 0 to 1e12; absent for a full open
 */
public record BrokenConductor(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Above(floor = 0, most = 1e12) @Usual(from = 1, to = 100_000, byFactors = true)
                OptionalDouble seriesResistanceOhms)
        implements InlineComponent {

    /** Checks the ranges. */
    public BrokenConductor {
        Require.components(BrokenConductor.class, id, positionMetres, seriesResistanceOhms);
    }

    @Override
    public EventKind kind() {
        return seriesResistanceOhms.isEmpty() ? EventKind.OPEN : EventKind.PARTIAL_OPEN;
    }

    @Override
    public BrokenConductor movedTo(double newPositionMetres) {
        return new BrokenConductor(id, newPositionMetres, seriesResistanceOhms);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.brokenConductor(this);
    }
}

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
 * Two conductors touching (short), or joined by some resistance (partial short).
 *
 * <p>A full short sends everything back inverted and hides what lies beyond; a partial one reflects ρ = −Z0/(2R +
 * Z0).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param shuntResistanceOhms what joins the conductors [Ω], above 0 to 1e12; absent for a full short
 */
public record TouchingConductors(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Above(floor = 0, most = 1e12) @Usual(from = 1, to = 100_000, byFactors = true)
                OptionalDouble shuntResistanceOhms)
        implements InlineComponent {

    /** Checks the ranges. */
    public TouchingConductors {
        Require.components(TouchingConductors.class, id, positionMetres, shuntResistanceOhms);
    }

    @Override
    public EventKind kind() {
        return shuntResistanceOhms.isEmpty() ? EventKind.SHORT : EventKind.PARTIAL_SHORT;
    }

    @Override
    public TouchingConductors movedTo(double newPositionMetres) {
        return new TouchingConductors(id, newPositionMetres, shuntResistanceOhms);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.touchingConductors(this);
    }
}

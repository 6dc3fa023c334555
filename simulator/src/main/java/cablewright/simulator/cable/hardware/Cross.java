// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;

/**
 * A wire of the tested pair touching a wire of a neighbouring pair. A wire joined on to the neighbour's wire and put right
 * further on is a {@link cablewright.simulator.cable.condition.Split}.
 *
 * <p>What flows over the contact comes half from the tested pair, goes half into the neighbour, and drives one pair against the
 * other as the two wires of one circuit: to a balanced instrument the fault lies across the pair as four times its resistance,
 * the two ways of the circuit of pair against pair, side by side, and what the neighbour shows there
 * ({@link cablewright.simulator.crosssection.split.CommonMode}). The neighbour is a sound pair of the same type that sends nothing
 * back. The cable must be a pair.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param contactResistanceOhms of the contact [Ω]
 */
public record Cross(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Between(least = 0, most = 1e6) @Usual(from = 1, to = 10e3, byFactors = true) double contactResistanceOhms)
        implements InlineComponent {

    /** Checks the ranges. */
    public Cross {
        Require.components(Cross.class, id, positionMetres, contactResistanceOhms);
    }

    @Override
    public EventKind kind() {
        return EventKind.CROSS;
    }

    @Override
    public Cross movedTo(double newPositionMetres) {
        return new Cross(id, newPositionMetres, contactResistanceOhms);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.cross(this);
    }
}

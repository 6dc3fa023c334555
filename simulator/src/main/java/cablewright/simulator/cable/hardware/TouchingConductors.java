// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Require;
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
public record TouchingConductors(String id, double positionMetres, OptionalDouble shuntResistanceOhms)
        implements InlineComponent {

    /** Refuses values that can't exist. */
    public TouchingConductors {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.present("shuntResistanceOhms", shuntResistanceOhms);
        shuntResistanceOhms.ifPresent(r -> Require.above("shuntResistanceOhms", r, 0, 1e12));
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

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Require;
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
public record BrokenConductor(String id, double positionMetres, OptionalDouble seriesResistanceOhms)
        implements InlineComponent {

    /** Refuses values that can't exist. */
    public BrokenConductor {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.present("seriesResistanceOhms", seriesResistanceOhms);
        seriesResistanceOhms.ifPresent(r -> Require.above("seriesResistanceOhms", r, 0, 1e12));
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

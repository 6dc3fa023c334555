// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;

/**
 * A plug and socket: a short length of line of another impedance, with some contact resistance at its middle.
 *
 * <p>The length is part of the connector, not of the run: it sits at one place of the cable's own measure.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param impedanceOhms characteristic impedance of its inside [Ω], 1 to 1000
 * @param lengthMetres electrical length of its inside [m], at the speed of light in vacuum, above 0 to 1
 * @param contactResistanceOhms series resistance [Ω], 0 to 1e6
 */
public record Connector(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Between(least = 1, most = 1000) @Usual(from = 25, to = 200, byFactors = true) double impedanceOhms,
        @Above(floor = 0, most = 1) @Usual(from = 0.005, to = 0.3, byFactors = true) double lengthMetres,
        @Between(least = 0, most = 1e6) @Usual(from = 0, to = 20) double contactResistanceOhms)
        implements InlineComponent {

    /** Checks the ranges. */
    public Connector {
        Require.components(Connector.class, id, positionMetres, impedanceOhms, lengthMetres, contactResistanceOhms);
    }

    @Override
    public EventKind kind() {
        return EventKind.CONNECTOR;
    }

    @Override
    public Connector movedTo(double newPositionMetres) {
        return new Connector(id, newPositionMetres, impedanceOhms, lengthMetres, contactResistanceOhms);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.connector(this);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Require;

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
        String id, double positionMetres, double impedanceOhms, double lengthMetres, double contactResistanceOhms)
        implements InlineComponent {

    /** Refuses values that can't exist. */
    public Connector {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.between("impedanceOhms", impedanceOhms, 1, 1000);
        Require.above("lengthMetres", lengthMetres, 0, 1);
        Require.between("contactResistanceOhms", contactResistanceOhms, 0, 1e6);
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

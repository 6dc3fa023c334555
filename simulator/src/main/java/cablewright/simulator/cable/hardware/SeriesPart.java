// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.check.Require;

/**
 * A lumped element in series with the line, given by its values: ρ = Z/(Z + 2 Z0).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param part the element
 */
public record SeriesPart(String id, double positionMetres, Lumped part) implements InlineComponent {

    /** Refuses values that can't exist. */
    public SeriesPart {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.present("part", part);
    }

    @Override
    public EventKind kind() {
        return EventKind.ELEMENT;
    }

    @Override
    public SeriesPart movedTo(double newPositionMetres) {
        return new SeriesPart(id, newPositionMetres, part);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.seriesPart(this);
    }
}

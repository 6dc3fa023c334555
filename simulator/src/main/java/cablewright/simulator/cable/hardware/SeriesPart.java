// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;

/**
 * A lumped element in series with the line, given by its values: ρ = Z/(Z + 2 Z0).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param part the element
 */
public record SeriesPart(@Id String id, @PlaceOnCable double positionMetres, Lumped part) implements InlineComponent {

    /** Checks the ranges. */
    public SeriesPart {
        Require.components(SeriesPart.class, id, positionMetres, part);
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

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
 * One conductor of a pair broken, the other whole.
 *
 * <p>The current of the broken wire is zero, so what passes is carried by the whole wire against all that surrounds the pair:
 * to a balanced instrument the break is in series with the pair, a resistance to a fast edge and a capacitance to a slow signal.
 * Both follow from the pair's own geometry and length, with the other pairs of the cable for surroundings
 * ({@link cablewright.simulator.crosssection.split.CommonMode}). Where the surroundings are others, or the line has no
 * geometry, a capacitance may be given in place of both.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param bridgingCapacitanceFarads capacitance across the break as the pair sees it [F], above 0 to 1e-6; absent where it
 *     follows from the pair
 */
public record OneSideOpen(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Above(floor = 0, most = 1e-6) @Usual(from = 1e-12, to = 10e-9, byFactors = true)
                OptionalDouble bridgingCapacitanceFarads)
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

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Require;
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
public record OneSideOpen(String id, double positionMetres, OptionalDouble bridgingCapacitanceFarads)
        implements InlineComponent {

    /** Refuses values that can't exist. */
    public OneSideOpen {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.present("bridgingCapacitanceFarads", bridgingCapacitanceFarads);
        bridgingCapacitanceFarads.ifPresent(c -> Require.above("bridgingCapacitanceFarads", c, 0, 1e-6));
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

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
 * A build-out: capacitance across the pair and resistance in it that make a short loading section behave like a
 * full one.
 *
 * <p>Circuit: half of the resistance, the capacitance across, the other half.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param capacitanceFarads capacitance across the pair [F], above 0 to 1e-3
 * @param resistanceOhms resistance in the loop [Ω], 0 to 1e4
 */
public record BuildOut(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Above(floor = 0, most = 1e-3) @Usual(from = 1e-9, to = 200e-9, byFactors = true) double capacitanceFarads,
        @Between(least = 0, most = 1e4) @Usual(from = 0, to = 500) double resistanceOhms)
        implements InlineComponent {

    /** Checks the ranges. */
    public BuildOut {
        Require.components(BuildOut.class, id, positionMetres, capacitanceFarads, resistanceOhms);
    }

    @Override
    public EventKind kind() {
        return EventKind.BUILD_OUT;
    }

    @Override
    public BuildOut movedTo(double newPositionMetres) {
        return new BuildOut(id, newPositionMetres, capacitanceFarads, resistanceOhms);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.buildOut(this);
    }
}

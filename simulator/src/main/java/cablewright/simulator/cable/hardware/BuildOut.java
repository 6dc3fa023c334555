// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Require;

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
public record BuildOut(String id, double positionMetres, double capacitanceFarads, double resistanceOhms)
        implements InlineComponent {

    /** Refuses values that can't exist. */
    public BuildOut {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.above("capacitanceFarads", capacitanceFarads, 0, 1e-3);
        Require.between("resistanceOhms", resistanceOhms, 0, 1e4);
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

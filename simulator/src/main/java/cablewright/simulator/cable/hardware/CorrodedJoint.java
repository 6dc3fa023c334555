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
 * A joint whose contact has corroded: a series resistance, perhaps bridged by the capacitance of its oxide.
 *
 * <p>ρ = Z/(Z + 2 Z0) with Z = R or R‖C (Pozar, Microwave Engineering, 4th ed., sec. 4.3, number from memory). A
 * bridging capacitance lets the fast edge pass, so a short pulse shows less of it than a long one.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param seriesResistanceOhms resistance of the contact [Ω], above 0 to 1e9
 * @param oxideCapacitanceFarads capacitance across it [F], above 0 to 1e-3; absent for none
 */
public record CorrodedJoint(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Above(floor = 0, most = 1e9) @Usual(from = 0.1, to = 10_000, byFactors = true) double seriesResistanceOhms,
        @Above(floor = 0, most = 1e-3) @Usual(from = 1e-12, to = 100e-9, byFactors = true)
                OptionalDouble oxideCapacitanceFarads)
        implements InlineComponent {

    /** Checks the ranges. */
    public CorrodedJoint {
        Require.components(CorrodedJoint.class, id, positionMetres, seriesResistanceOhms, oxideCapacitanceFarads);
    }

    @Override
    public EventKind kind() {
        return EventKind.CORRODED_JOINT;
    }

    @Override
    public CorrodedJoint movedTo(double newPositionMetres) {
        return new CorrodedJoint(id, newPositionMetres, seriesResistanceOhms, oxideCapacitanceFarads);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.corrodedJoint(this);
    }
}

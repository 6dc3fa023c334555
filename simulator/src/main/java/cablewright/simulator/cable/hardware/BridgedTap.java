// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import java.util.Optional;

/**
 * An unused branch left joined across the line.
 *
 * <p>ρ = −Z0/(2 Zt + Z0), so −1/3 for a branch of the line's own impedance, then the echo of the branch's end
 * (Starr, Cioffi, Silverman, Understanding Digital Subscriber Line Technology, ch. 3, from memory).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param branch the branch, a cable of its own with its own events and end
 */
public record BridgedTap(@Id String id, @PlaceOnCable double positionMetres, Cable branch) implements InlineComponent {

    /** Checks the ranges. */
    public BridgedTap {
        Require.components(BridgedTap.class, id, positionMetres, branch);
    }

    @Override
    public EventKind kind() {
        return EventKind.BRIDGED_TAP;
    }

    @Override
    public BridgedTap movedTo(double newPositionMetres) {
        return new BridgedTap(id, newPositionMetres, branch);
    }

    @Override
    public Optional<Cable> branchCable() {
        return Optional.of(branch);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.bridgedTap(this);
    }
}

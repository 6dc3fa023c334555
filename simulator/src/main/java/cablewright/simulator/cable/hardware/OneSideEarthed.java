// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;

/**
 * One wire of a pair joined to earth or to the shield through a resistance, the other sound.
 *
 * <p>The current into the earth comes half from the pair and half from both wires together, which it drives against all that
 * surrounds the pair: to a balanced instrument the fault lies across the pair as four times its resistance and the two ways of
 * that common mode, side by side ({@link cablewright.simulator.crosssection.split.CommonMode}). A short pulse meets a
 * resistance; a slow signal, on a pair whose ends float, a capacitance. The cable must be a pair.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param earthResistanceOhms from the wire to earth [Ω]
 */
public record OneSideEarthed(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Between(least = 0, most = 1e6) @Usual(from = 1, to = 10e3, byFactors = true) double earthResistanceOhms)
        implements InlineComponent {

    /** Checks the ranges. */
    public OneSideEarthed {
        Require.components(OneSideEarthed.class, id, positionMetres, earthResistanceOhms);
    }

    @Override
    public EventKind kind() {
        return EventKind.ONE_SIDE_EARTHED;
    }

    @Override
    public OneSideEarthed movedTo(double newPositionMetres) {
        return new OneSideEarthed(id, newPositionMetres, earthResistanceOhms);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.oneSideEarthed(this);
    }
}

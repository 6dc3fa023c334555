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
 * An inductance in series with a telephone pair. To a fast pulse it is almost an open: on 100 Ω, 88 mH have a
 * time constant of 0.44 ms.
 *
 * <p>Circuit: (R + sL) bridged by the winding's capacitance.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param inductanceHenries inductance of the loop [H], above 0 to 1
 * @param resistanceOhms resistance of the loop [Ω], 0 to 1000
 * @param windingCapacitanceFarads capacitance across the winding [F], 0 to 1e-6
 */
public record LoadCoil(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Above(floor = 0, most = 1) @Usual(from = 1e-3, to = 0.2, byFactors = true) double inductanceHenries,
        @Between(least = 0, most = 1000) @Usual(from = 0, to = 50) double resistanceOhms,
        @Between(least = 0, most = 1e-6) @Usual(from = 0, to = 2e-9) double windingCapacitanceFarads)
        implements InlineComponent {

    /** Checks the ranges. */
    public LoadCoil {
        Require.components(
                LoadCoil.class, id, positionMetres, inductanceHenries, resistanceOhms, windingCapacitanceFarads);
    }

    @Override
    public EventKind kind() {
        return EventKind.LOAD_COIL;
    }

    @Override
    public LoadCoil movedTo(double newPositionMetres) {
        return new LoadCoil(id, newPositionMetres, inductanceHenries, resistanceOhms, windingCapacitanceFarads);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.loadCoil(this);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Require;

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
        String id,
        double positionMetres,
        double inductanceHenries,
        double resistanceOhms,
        double windingCapacitanceFarads)
        implements InlineComponent {

    /** Refuses values that can't exist. */
    public LoadCoil {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.above("inductanceHenries", inductanceHenries, 0, 1);
        Require.between("resistanceOhms", resistanceOhms, 0, 1000);
        Require.between("windingCapacitanceFarads", windingCapacitanceFarads, 0, 1e-6);
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

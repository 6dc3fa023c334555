// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;

/**
 * Two lengths joined well: the conductors run a little further apart than in the cable, so the joint adds a
 * little series inductance, and its sleeve a little capacitance.
 *
 * <p>Series L, then shunt C, then series R. A good splice of coax has a few nH more than its C/Z0² would balance: a
 * small rise that recovers (common practice, no source).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param excessInductanceHenries series inductance beyond the cable's own [H], 0 to 1e-3
 * @param excessCapacitanceFarads shunt capacitance beyond the cable's own [F], 0 to 1e-6
 * @param seriesResistanceOhms contact resistance of both conductors [Ω], 0 to 10; more is a corroded joint
 */
public record Splice(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Between(least = 0, most = 1e-3) @Usual(from = 0, to = 50e-9) double excessInductanceHenries,
        @Between(least = 0, most = 1e-6) @Usual(from = 0, to = 10e-12) double excessCapacitanceFarads,
        @Between(least = 0, most = 10) @Usual(from = 0, to = 2) double seriesResistanceOhms)
        implements InlineComponent {

    /** Checks the ranges. */
    public Splice {
        Require.components(
                Splice.class,
                id,
                positionMetres,
                excessInductanceHenries,
                excessCapacitanceFarads,
                seriesResistanceOhms);
    }

    @Override
    public EventKind kind() {
        return EventKind.SPLICE;
    }

    @Override
    public Splice movedTo(double newPositionMetres) {
        return new Splice(
                id, newPositionMetres, excessInductanceHenries, excessCapacitanceFarads, seriesResistanceOhms);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.splice(this);
    }
}

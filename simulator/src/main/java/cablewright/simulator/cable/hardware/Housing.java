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
 * An amplifier or other housing in the line, as a reflectometer meets it: a band-limited two-port that passes
 * high frequencies with some loss and stops low ones.
 *
 * <p>Circuit: a coupling capacitor on each side, a matched resistive T of the stated loss between them, and a stray
 * capacitance at its middle. With C = 1/(2π f Z0) the corner frequency is f. A pulse much longer than 1/f meets
 * an open; an amplifier's gain is not modelled, since it is one-way and adds nothing to what comes back to its
 * input but through its own isolation (common practice, no source).
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param nominalImpedanceOhms impedance that it is made for [Ω], 1 to 1000
 * @param throughLossDecibels loss in its band [dB], above 0 to 60
 * @param strayCapacitanceFarads capacitance that spoils its match [F], 0 to 1e-9
 * @param lowCornerHertz frequency below which it stops the wave [Hz], above 0 to 1e9
 */
public record Housing(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Between(least = 1, most = 1000) @Usual(from = 25, to = 200, byFactors = true) double nominalImpedanceOhms,
        @Above(floor = 0, most = 60) @Usual(from = 0.2, to = 30, byFactors = true) double throughLossDecibels,
        @Between(least = 0, most = 1e-9) @Usual(from = 0, to = 10e-12) double strayCapacitanceFarads,
        @Above(floor = 0, most = 1e9) @Usual(from = 0.1e6, to = 200e6, byFactors = true) double lowCornerHertz)
        implements InlineComponent {

    /** Checks the ranges. */
    public Housing {
        Require.components(
                Housing.class,
                id,
                positionMetres,
                nominalImpedanceOhms,
                throughLossDecibels,
                strayCapacitanceFarads,
                lowCornerHertz);
    }

    @Override
    public EventKind kind() {
        return EventKind.HOUSING;
    }

    @Override
    public Housing movedTo(double newPositionMetres) {
        return new Housing(
                id,
                newPositionMetres,
                nominalImpedanceOhms,
                throughLossDecibels,
                strayCapacitanceFarads,
                lowCornerHertz);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.housing(this);
    }
}

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
 * A coax directional tap seen from the through line: it passes most of the wave on, takes a little for its
 * outlets, and is not quite matched.
 *
 * <p>Circuit: a symmetrical resistive T of the stated through loss, matched to the nominal impedance, whose middle
 * carries the transformer's magnetising inductance and a stray capacitance. The T gives K = 10^(loss/20), R1 =
 * Z0 (K − 1)/(K + 1), R2 = 2 Z0 K/(K² − 1) (Pozar, Microwave Engineering, 4th ed., ch. 4, from memory). The
 * stray capacitance makes the dip that recovers; the inductance L = Z0/(4π f) gives the low corner at which the
 * through loss has grown by about 3 dB. Passive and causal by construction; the outlets are taken as terminated.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param nominalImpedanceOhms impedance that it is made for [Ω], 1 to 1000
 * @param throughLossDecibels loss from input to through output [dB], above 0 to 20
 * @param strayCapacitanceFarads capacitance that spoils its match [F], 0 to 1e-9
 * @param lowCornerHertz frequency below which it no longer passes [Hz], 0 (passes down to DC) to 1e9
 */
public record Tap(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Between(least = 1, most = 1000) @Usual(from = 25, to = 200, byFactors = true) double nominalImpedanceOhms,
        @Above(floor = 0, most = 20) @Usual(from = 0.2, to = 12, byFactors = true) double throughLossDecibels,
        @Between(least = 0, most = 1e-9) @Usual(from = 0, to = 10e-12) double strayCapacitanceFarads,
        @Between(least = 0, most = 1e9) @Usual(from = 0, to = 10e6) double lowCornerHertz)
        implements InlineComponent {

    /** Checks the ranges. */
    public Tap {
        Require.components(
                Tap.class,
                id,
                positionMetres,
                nominalImpedanceOhms,
                throughLossDecibels,
                strayCapacitanceFarads,
                lowCornerHertz);
    }

    @Override
    public EventKind kind() {
        return EventKind.TAP;
    }

    @Override
    public Tap movedTo(double newPositionMetres) {
        return new Tap(
                id,
                newPositionMetres,
                nominalImpedanceOhms,
                throughLossDecibels,
                strayCapacitanceFarads,
                lowCornerHertz);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.tap(this);
    }
}

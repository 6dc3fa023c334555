// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Require;

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
        String id,
        double positionMetres,
        double nominalImpedanceOhms,
        double throughLossDecibels,
        double strayCapacitanceFarads,
        double lowCornerHertz)
        implements InlineComponent {

    /** Refuses values that can't exist. */
    public Tap {
        Require.id(id);
        Require.between("positionMetres", positionMetres, 0, Cable.MOST_METRES);
        Require.between("nominalImpedanceOhms", nominalImpedanceOhms, 1, 1000);
        Require.above("throughLossDecibels", throughLossDecibels, 0, 20);
        Require.between("strayCapacitanceFarads", strayCapacitanceFarads, 0, 1e-9);
        Require.between("lowCornerHertz", lowCornerHertz, 0, 1e9);
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

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Readable;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import java.util.Optional;

/**
 * A device that divides the line into two legs: the line goes on through one of them, the other is a cable of
 * its own.
 *
 * <p>An ideal matched hybrid of nominal impedance with isolated legs, behind a stray capacitance: Γin = t²Γthrough
 * + u²Γleg, with t and u the amplitudes of the two losses. Passive where t² + u² ≤ 1, which the constructor
 * demands. Isolation of real devices is finite (20 to 30 dB, common practice, no source); that is not modelled.
 *
 * @param id name within the cable
 * @param positionMetres distance from the near end [m]
 * @param nominalImpedanceOhms impedance that it is made for [Ω], 1 to 1000
 * @param throughLossDecibels loss from input to the leg in which the line goes on [dB], above 0 to 40
 * @param legLossDecibels loss from input to the other leg [dB], above 0 to 40
 * @param strayCapacitanceFarads capacitance at its input that spoils its match [F], 0 to 1e-9
 * @param leg the cable on the other leg
 * @param inputAtFarSide whether its input faces the cable's far end, so that the near end is joined to an output and
 *     sees nothing of the other leg
 */
public record Splitter(
        @Id String id,
        @PlaceOnCable double positionMetres,
        @Between(least = 1, most = 1000) @Usual(from = 25, to = 200, byFactors = true) double nominalImpedanceOhms,
        @Above(floor = 0, most = 40) @Usual(from = 0.5, to = 20, byFactors = true) double throughLossDecibels,
        @Above(floor = 0, most = 40) @Usual(from = 0.5, to = 20, byFactors = true) double legLossDecibels,
        @Between(least = 0, most = 1e-9) @Usual(from = 0, to = 10e-12) double strayCapacitanceFarads,
        Cable leg,
        boolean inputAtFarSide)
        implements InlineComponent {

    /** Checks the ranges. */
    public Splitter {
        Require.components(
                Splitter.class,
                id,
                positionMetres,
                nominalImpedanceOhms,
                throughLossDecibels,
                legLossDecibels,
                strayCapacitanceFarads,
                leg,
                inputAtFarSide);
        double power = Math.pow(10, -throughLossDecibels / 10) + Math.pow(10, -legLossDecibels / 10);
        if (power > 1 + 1e-9) {
            throw new IllegalArgumentException(
                    "throughLossDecibels is " + Readable.number(throughLossDecibels)
                            + " and legLossDecibels is " + Readable.number(legLossDecibels)
                            + "; together the legs would get more power than comes in (3.01 dB each is the least for equal legs)");
        }
    }

    @Override
    public EventKind kind() {
        return EventKind.SPLITTER;
    }

    @Override
    public Splitter movedTo(double newPositionMetres) {
        return new Splitter(
                id,
                newPositionMetres,
                nominalImpedanceOhms,
                throughLossDecibels,
                legLossDecibels,
                strayCapacitanceFarads,
                leg,
                inputAtFarSide);
    }

    @Override
    public Splitter mirrored(double cableLengthMetres) {
        double position = Math.max(0, cableLengthMetres - positionMetres);
        return new Splitter(
                id,
                position,
                nominalImpedanceOhms,
                throughLossDecibels,
                legLossDecibels,
                strayCapacitanceFarads,
                leg,
                !inputAtFarSide);
    }

    @Override
    public Optional<Cable> branchCable() {
        return Optional.of(leg);
    }

    @Override
    public <T> T accept(ComponentVisitor<T> visitor) {
        return visitor.splitter(this);
    }
}

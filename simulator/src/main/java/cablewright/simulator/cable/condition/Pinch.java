// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LengthOnCable;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import cablewright.simulator.crosssection.CrossSection;

/**
 * Outer conductor pressed toward the inner over a short length, or the two wires of a pair pressed together;
 * deep enough to touch it is a crush, which is modelled as a short at the same place.
 *
 * <p>Geometry: {@link CrossSection#pinched}. Impedance falls and comes back: a dip that recovers.
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param depthFraction how far the gap is pressed shut where it is worst, above 0 and below 1
 * @param profile how the depth varies along the stretch
 */
public record Pinch(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Above(floor = 0, most = 0.99) @Usual(from = 0.01, to = 0.95) double depthFraction,
        Profile profile)
        implements LineCondition {

    /** Checks the ranges. */
    public Pinch {
        Require.components(Pinch.class, id, startMetres, lengthMetres, depthFraction, profile);
    }

    @Override
    public EventKind kind() {
        return EventKind.PINCH;
    }

    @Override
    public Pinch movedTo(double newStartMetres) {
        return new Pinch(id, newStartMetres, lengthMetres, depthFraction, profile);
    }

    @Override
    public Pinch mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        return new Pinch(id, start, lengthMetres, depthFraction, profile.mirrored());
    }

    @Override
    public double depthAt(double along) {
        return depthFraction * profile.at(along);
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return depth > 0 ? section.pinched(depth) : section;
    }

    @Override
    public double longestStepMetres() {
        return profile.longestStepMetres(lengthMetres);
    }

    @Override
    public int compositionOrder() {
        return 0;
    }

    @Override
    public <T> T accept(ConditionVisitor<T> visitor) {
        return visitor.pinch(this);
    }
}

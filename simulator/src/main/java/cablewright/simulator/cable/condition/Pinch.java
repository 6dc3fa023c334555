// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.CrossSection;

/**
 * Outer conductor pressed toward the inner over a short length, or the two wires of a pair pressed together;
 * deep enough to touch it is a crush, which is told as a short at the same place.
 *
 * <p>Geometry: {@link CrossSection#pinched}. Impedance falls and comes back: a dip that recovers.
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param depthFraction how far the gap is pressed shut where it is worst, above 0 and below 1
 * @param profile how the depth varies along the stretch
 */
public record Pinch(String id, double startMetres, double lengthMetres, double depthFraction, Profile profile)
        implements LineCondition {

    /** Refuses values that can't exist. */
    public Pinch {
        Require.id(id);
        Require.between("startMetres", startMetres, 0, Cable.MOST_METRES);
        Require.above("lengthMetres", lengthMetres, 0, Cable.MOST_METRES);
        Require.above("depthFraction", depthFraction, 0, 0.99);
        Require.present("profile", profile);
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

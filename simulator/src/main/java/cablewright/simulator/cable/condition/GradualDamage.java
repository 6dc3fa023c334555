// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LengthOnCable;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import cablewright.simulator.crosssection.CrossSection;

/**
 * Damage that grows and fades over metres, such as heat, bending or a lightning current leave: the impedance
 * drifts away and comes back with no edge.
 *
 * <p>{@link CrossSection#scaled} by relativeImpedance^profile, so a linear profile is an exponential taper: to
 * first order a pulse of length w reflects ½ ln(r) · min(1, w v/(2 L)) (Pozar, Microwave Engineering, 4th ed.,
 * sec. 5.8, number from memory).
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param relativeImpedance impedance over the sound cable's where it is worst, 0.05 to 20, not 1
 * @param profile how it varies along the stretch
 */
public record GradualDamage(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Between(least = 0.05, most = 20) @Usual(from = 0.4, to = 2.5, byFactors = true) double relativeImpedance,
        Profile profile)
        implements LineCondition {

    /** Checks the ranges. */
    public GradualDamage {
        Require.components(GradualDamage.class, id, startMetres, lengthMetres, relativeImpedance, profile);
    }

    @Override
    public EventKind kind() {
        return EventKind.GRADUAL_DAMAGE;
    }

    @Override
    public GradualDamage movedTo(double newStartMetres) {
        return new GradualDamage(id, newStartMetres, lengthMetres, relativeImpedance, profile);
    }

    @Override
    public GradualDamage mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        return new GradualDamage(id, start, lengthMetres, relativeImpedance, profile.mirrored());
    }

    @Override
    public double depthAt(double along) {
        return Math.pow(relativeImpedance, profile.at(along));
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return depth == 1 ? section : section.scaled(depth);
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
        return visitor.gradualDamage(this);
    }
}

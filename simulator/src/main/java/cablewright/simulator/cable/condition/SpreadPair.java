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
 * The two wires of a pair pulled apart over a stretch: impedance rises, and velocity too where air takes the
 * place of plastic.
 *
 * <p>Geometry: {@link CrossSection#spread}.
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param spacingFactor spacing over the sound pair's where it is worst, above 1 to 20
 * @param profile how the spreading varies along the stretch
 */
public record SpreadPair(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Above(floor = 1, most = 20) @Usual(from = 1.02, to = 8, byFactors = true) double spacingFactor,
        Profile profile)
        implements LineCondition {

    /** Checks the ranges. */
    public SpreadPair {
        Require.components(SpreadPair.class, id, startMetres, lengthMetres, spacingFactor, profile);
    }

    @Override
    public EventKind kind() {
        return EventKind.SPREAD_PAIR;
    }

    @Override
    public SpreadPair movedTo(double newStartMetres) {
        return new SpreadPair(id, newStartMetres, lengthMetres, spacingFactor, profile);
    }

    @Override
    public SpreadPair mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        return new SpreadPair(id, start, lengthMetres, spacingFactor, profile.mirrored());
    }

    @Override
    public double depthAt(double along) {
        return 1 + (spacingFactor - 1) * profile.at(along);
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return depth > 1 ? section.spread(depth) : section;
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
        return visitor.spreadPair(this);
    }
}

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
import cablewright.simulator.crosssection.BentTube;
import cablewright.simulator.crosssection.CrossSection;
import java.util.OptionalDouble;

/**
 * A coax bent too tightly: its tube becomes oval and, past the least radius, folds toward the core. On a trace it is a pinch.
 *
 * <p>Geometry: {@link BentTube}. The least radius is that at which the tube of the cable folds, or, where the cable has no tube
 * whose wall is known, the one given here: what the maker allows, commonly ten times the outer diameter of drop cable (common
 * practice, no source).
 *
 * @param id name within the cable
 * @param startMetres where the bend begins, from the near end [m]
 * @param lengthMetres how long it is along the cable [m]
 * @param bendRadiusMetres radius of the bend to the cable's axis where it is tightest [m], 0.001 to 100
 * @param leastRadiusMetres radius below which the cable folds [m], 0.001 to 100; empty for that of its tube
 * @param profile how the curvature varies along the stretch
 */
public record Kink(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Between(least = 0.001, most = 100) @Usual(from = 0.005, to = 0.5, byFactors = true) double bendRadiusMetres,
        @Between(least = 0.001, most = 100) @Usual(from = 0.02, to = 1, byFactors = true)
                OptionalDouble leastRadiusMetres,
        Profile profile)
        implements LineCondition {

    /** Checks the ranges. */
    public Kink {
        Require.components(Kink.class, id, startMetres, lengthMetres, bendRadiusMetres, leastRadiusMetres, profile);
    }

    @Override
    public EventKind kind() {
        return EventKind.PINCH;
    }

    @Override
    public Kink movedTo(double newStartMetres) {
        return new Kink(id, newStartMetres, lengthMetres, bendRadiusMetres, leastRadiusMetres, profile);
    }

    @Override
    public Kink mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        return new Kink(id, start, lengthMetres, bendRadiusMetres, leastRadiusMetres, profile.mirrored());
    }

    /**
     * Returns the radius below which the cable folds.
     *
     * @param section the cable
     * @return radius [m]
     * @throws IllegalArgumentException if neither the event nor the cable gives it
     */
    public double foldsBelowMetres(CrossSection section) {
        if (leastRadiusMetres.isPresent()) {
            return leastRadiusMetres.getAsDouble();
        }
        return BentTube.leastRadiusMetres(section)
                .orElseThrow(
                        () -> new IllegalArgumentException("leastRadiusMetres is missing; this cable has no tube whose"
                                + " wall gives it: give the least radius that its maker allows"));
    }

    @Override
    public double depthAt(double along) {
        return profile.at(along);
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return depth > 0 ? BentTube.bent(section, depth * foldsBelowMetres(section) / bendRadiusMetres) : section;
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
        return visitor.kink(this);
    }
}

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
import java.util.OptionalDouble;

/**
 * Inner conductor off the axis of its dielectric, all along the stretch or swinging with a pitch.
 *
 * <p>Geometry: {@link CrossSection#offCentre}. Impedance falls; where the offset is the same all along, nothing
 * comes back from inside the stretch, only from its two ends. With a pitch p the eccentricity is e |cos(π z/p)|,
 * so that its effect on impedance repeats every p.
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param eccentricity offset over the largest offset that is possible, above 0 to 0.98
 * @param profile how the offset varies along the stretch
 * @param pitchMetres distance after which the swing repeats [m], above 0; absent for none
 */
public record OffCentreCore(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Above(floor = 0, most = 0.98) @Usual(from = 0.01, to = 0.95) double eccentricity,
        Profile profile,
        @LengthOnCable @Usual(from = 0.05, to = 50, byFactors = true) OptionalDouble pitchMetres)
        implements LineCondition {

    /** Checks the ranges. */
    public OffCentreCore {
        Require.components(OffCentreCore.class, id, startMetres, lengthMetres, eccentricity, profile, pitchMetres);
    }

    @Override
    public EventKind kind() {
        return EventKind.OFF_CENTRE;
    }

    @Override
    public OffCentreCore movedTo(double newStartMetres) {
        return new OffCentreCore(id, newStartMetres, lengthMetres, eccentricity, profile, pitchMetres);
    }

    @Override
    public OffCentreCore mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        return new OffCentreCore(id, start, lengthMetres, eccentricity, profile.mirrored(), pitchMetres);
    }

    @Override
    public double depthAt(double along) {
        double swing = pitchMetres.isPresent()
                ? Math.abs(Math.cos(Math.PI * along * lengthMetres / pitchMetres.getAsDouble()))
                : 1;
        return eccentricity * profile.at(along) * swing;
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return depth > 0 ? section.offCentre(depth) : section;
    }

    @Override
    public double longestStepMetres() {
        double byProfile = profile.longestStepMetres(lengthMetres);
        return pitchMetres.isPresent() ? Math.min(byProfile, pitchMetres.getAsDouble() / Profile.STEPS) : byProfile;
    }

    @Override
    public int compositionOrder() {
        return 0;
    }

    @Override
    public <T> T accept(ConditionVisitor<T> visitor) {
        return visitor.offCentreCore(this);
    }
}

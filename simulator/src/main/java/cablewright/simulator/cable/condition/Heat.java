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
 * A stretch at another temperature than the rest of the cable: more loss, a little other velocity.
 *
 * <p>Materials: {@link CrossSection#atTemperature}.
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param celsius temperature where it is hottest or coldest [°C], −60 to 150
 * @param restCelsius temperature of the cable beside it [°C], −60 to 150
 * @param profile how the temperature varies along the stretch
 */
public record Heat(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Between(least = -60, most = 150) @Usual(from = -40, to = 120) double celsius,
        @Between(least = -60, most = 150) @Usual(from = -40, to = 60) double restCelsius,
        Profile profile)
        implements LineCondition {

    /** Checks the ranges. */
    public Heat {
        Require.components(Heat.class, id, startMetres, lengthMetres, celsius, restCelsius, profile);
    }

    @Override
    public EventKind kind() {
        return EventKind.HEAT;
    }

    @Override
    public Heat movedTo(double newStartMetres) {
        return new Heat(id, newStartMetres, lengthMetres, celsius, restCelsius, profile);
    }

    @Override
    public Heat mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        return new Heat(id, start, lengthMetres, celsius, restCelsius, profile.mirrored());
    }

    @Override
    public double depthAt(double along) {
        return restCelsius + (celsius - restCelsius) * profile.at(along);
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return section.atTemperature(depth);
    }

    @Override
    public double longestStepMetres() {
        return profile.longestStepMetres(lengthMetres);
    }

    @Override
    public int compositionOrder() {
        return 2;
    }

    @Override
    public <T> T accept(ConditionVisitor<T> visitor) {
        return visitor.heat(this);
    }
}

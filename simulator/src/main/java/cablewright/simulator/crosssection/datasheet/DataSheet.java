// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.datasheet;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Readable;
import cablewright.simulator.check.Require;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a maker's data sheet says of a cable, at 20 degrees Celsius.
 *
 * @param layout coax or pair
 * @param impedanceOhms characteristic impedance, above 0
 * @param velocityFraction velocity of propagation, share of the speed of light, above 0 and at most 1
 * @param loopResistanceOhmsPerMetre DC resistance of both conductors together; empty if not given
 * @param insulationDiameterMetres coax: over the dielectric; pair: over the insulation of one wire, which is also the
 *     distance of centres; empty if not given
 * @param attenuation attenuation at two or more different frequencies; kept by rising frequency
 */
public record DataSheet(
        ConductorLayout layout,
        @Above(floor = 0) double impedanceOhms,
        @Above(floor = 0, most = 1) double velocityFraction,
        @Between(least = 0) OptionalDouble loopResistanceOhmsPerMetre,
        @Above(floor = 0) OptionalDouble insulationDiameterMetres,
        @Entries(least = 2) List<AttenuationPoint> attenuation) {

    /** Far below and far above any cable; beyond them the fit would run out of digits. */
    private static final double LEAST_DECIBEL_PER_METRE = 1e-9;

    private static final double MOST_DECIBEL_PER_METRE = 1e4;

    // Rejects a sheet that can't be of a cable and sorts its points.
    public DataSheet {
        Require.components(
                DataSheet.class,
                layout,
                impedanceOhms,
                velocityFraction,
                loopResistanceOhmsPerMetre,
                insulationDiameterMetres,
                attenuation);
        attenuation = attenuation.stream()
                .sorted(Comparator.comparingDouble(AttenuationPoint::frequencyHertz))
                .toList();
        long different = attenuation.stream()
                .map(AttenuationPoint::frequencyHertz)
                .distinct()
                .count();
        if (different < attenuation.size()) {
            throw new IllegalArgumentException("attenuation has " + attenuation.size() + " points at " + different
                    + " different frequencies; allowed is one at each frequency");
        }
        for (AttenuationPoint point : attenuation) {
            Require.between(
                    "attenuation at " + Readable.number(point.frequencyHertz()) + " Hz",
                    point.decibelPerMetre(),
                    LEAST_DECIBEL_PER_METRE,
                    MOST_DECIBEL_PER_METRE);
        }
    }
}

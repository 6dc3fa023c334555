// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.datasheet;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * A published attenuation.
 *
 * @param frequencyHertz frequency
 * @param decibelPerMetre attenuation of the matched line at 20 degrees Celsius, dB/m
 */
public record AttenuationPoint(@Above(floor = 0) double frequencyHertz, @Between(least = 0) double decibelPerMetre) {

    private static final double METRES_PER_HUNDRED_FEET = 30.48;

    // Checks the ranges.
    public AttenuationPoint {
        Require.components(AttenuationPoint.class, frequencyHertz, decibelPerMetre);
    }

    /**
     * From the units of American tables.
     *
     * @param megahertz frequency in MHz
     * @param decibelPerHundredFeet attenuation in dB per 100 ft
     * @return the point
     */
    public static AttenuationPoint perHundredFeet(double megahertz, double decibelPerHundredFeet) {
        return new AttenuationPoint(megahertz * 1e6, decibelPerHundredFeet / METRES_PER_HUNDRED_FEET);
    }

    /**
     * From the units of data sheets elsewhere.
     *
     * @param megahertz frequency in MHz
     * @param decibelPerHundredMetres attenuation in dB per 100 m
     * @return the point
     */
    public static AttenuationPoint perHundredMetres(double megahertz, double decibelPerHundredMetres) {
        return new AttenuationPoint(megahertz * 1e6, decibelPerHundredMetres / 100);
    }
}

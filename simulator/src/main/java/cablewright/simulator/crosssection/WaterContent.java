// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.Water;

/**
 * Water in a dielectric: how it lies, how much and which.
 *
 * @param picture how the water lies
 * @param volumeFraction share of the dielectric's volume that is water, 0 to 1
 * @param water the water
 */
public record WaterContent(
        WaterDistribution picture, @Between(least = 0, most = 1) double volumeFraction, Water water) {

    // Checks the ranges.
    public WaterContent {
        Require.components(WaterContent.class, picture, volumeFraction, water);
    }
}

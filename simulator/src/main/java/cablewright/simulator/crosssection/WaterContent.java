// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.material.Limits;
import cablewright.simulator.material.Water;
import java.util.Objects;

/**
 * Water in a dielectric: how it lies, how much and which.
 *
 * @param picture how the water lies
 * @param volumeFraction share of the dielectric's volume that is water, 0 to 1
 * @param water the water
 */
public record WaterContent(WaterDistribution picture, double volumeFraction, Water water) {

    // Rejects a soak that can't exist.
    public WaterContent {
        Objects.requireNonNull(picture, "picture");
        Limits.within("volumeFraction", volumeFraction, 0, 1);
        Objects.requireNonNull(water, "water");
    }
}

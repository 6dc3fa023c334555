// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.PrimaryConstants;
import cablewright.simulator.material.PhysicalConstants;
import java.util.Optional;

/**
 * A line by four constants, z = R + sL and y = G + sC: all that a ladder of lumped parts or a general circuit simulator can
 * be given.
 *
 * @param resistanceOhmsPerMetre R, 0 or more
 * @param inductanceHenriesPerMetre L, above 0
 * @param conductanceSiemensPerMetre G, 0 or more
 * @param capacitanceFaradsPerMetre C, above 0
 */
public record LineConstants(
        double resistanceOhmsPerMetre,
        double inductanceHenriesPerMetre,
        double conductanceSiemensPerMetre,
        double capacitanceFaradsPerMetre) {

    private static final double ALL_BUT_DC_RADIANS = 2 * Math.PI;

    /**
     * Takes a cross-section at its word, if four constants are all there is to it.
     *
     * @param section the cross-section
     * @return its constants; empty where they vary with frequency
     */
    public static Optional<LineConstants> exactly(CrossSection section) {
        if (!(section instanceof ConstantsSection)) {
            return Optional.empty();
        }
        ConstantsSection line = (ConstantsSection) section;
        if (line.skinOhmsPerMetrePerRootRadian() != 0 || !line.relaxations().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LineConstants(
                line.resistanceOhmsPerMetre(),
                line.inductanceHenriesPerMetre(),
                line.conductanceSiemensPerMetre(),
                line.capacitanceFaradsPerMetre()));
    }

    /**
     * Finds what is nearest to a cross-section: L and C of the high-frequency impedance and velocity, by which edges travel,
     * and R and G at 1 Hz, to which everything settles. What lies between, the loss that rises with frequency, is lost.
     *
     * @param section the cross-section
     * @return four constants
     */
    public static LineConstants near(CrossSection section) {
        return exactly(section).orElseGet(() -> {
            double slowness = 1 / (section.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
            PrimaryConstants low = section.primaryConstants(new double[] {0}, new double[] {ALL_BUT_DC_RADIANS});
            return new LineConstants(
                    low.zRe()[0], section.impedanceOhms() * slowness, low.yRe()[0], slowness / section.impedanceOhms());
        });
    }

    /**
     * Returns the impedance without loss.
     *
     * @return √(L/C) [Ω]
     */
    public double impedanceOhms() {
        return Math.sqrt(inductanceHenriesPerMetre / capacitanceFaradsPerMetre);
    }

    /**
     * Returns the delay of an edge.
     *
     * @return √(LC) [s/m]
     */
    public double secondsPerMetre() {
        return Math.sqrt(inductanceHenriesPerMetre * capacitanceFaradsPerMetre);
    }

    /**
     * Describes a line without loss.
     *
     * @return whether R and G are zero
     */
    public boolean isLossless() {
        return resistanceOhmsPerMetre == 0 && conductanceSiemensPerMetre == 0;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import java.util.Optional;

/** What a picture of a cross-section needs to know; lengths in metres, to scale. */
public sealed interface SectionDrawing {

    /**
     * A coax.
     *
     * @param coreDiameterMetres core
     * @param outerDiameterMetres dielectric before pressing
     * @param coreOffsetMetres core from the middle of the unpressed dielectric
     * @param pressedDepthMetres how far the outer conductor is pressed in, on the side to which the core lies
     * @param wetFraction share of the dielectric's volume that is water
     * @param waterPicture how the water lies; empty if dry. Of several, the last that came
     */
    record Coax(
            double coreDiameterMetres,
            double outerDiameterMetres,
            double coreOffsetMetres,
            double pressedDepthMetres,
            double wetFraction,
            Optional<WaterDistribution> waterPicture)
            implements SectionDrawing {}

    /**
     * A pair.
     *
     * @param wireDiameterMetres metal of one wire
     * @param spacingMetres between the wires' centres
     * @param insulationDiameterMetres insulation of one wire
     * @param wetFraction share of the space around the wires that is water
     */
    record Pair(double wireDiameterMetres, double spacingMetres, double insulationDiameterMetres, double wetFraction)
            implements SectionDrawing {}

    /** A line known by its constants only. */
    record Unknown() implements SectionDrawing {}
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.datasheet;

import java.util.List;

/**
 * How a cable was fitted to its data sheet, and how well.
 *
 * @param loopResistanceOhmsPerMetre DC resistance of both conductors
 * @param resistanceOrigin where that resistance comes from
 * @param skinOhmsPerMetrePerRootRadian k of both conductors: {@code z = s L + k sqrt(s)} at full skin effect
 * @param lossTangent of the dielectric, the same at all frequencies
 * @param points what the sheet says and what the fit gives, by rising frequency
 * @param relativeRms root of the mean square of (fit - sheet)/sheet
 */
public record DataSheetFit(
        double loopResistanceOhmsPerMetre,
        Resistance resistanceOrigin,
        double skinOhmsPerMetrePerRootRadian,
        double lossTangent,
        List<Point> points,
        double relativeRms) {

    /** Where the DC resistance comes from. */
    public enum Resistance {
        /** From the sheet. */
        GIVEN,
        /** From the attenuation, with the rest. */
        FITTED,
        /** A solid copper core (or pair) of the equivalent size: the sheet has neither resistance nor three points. */
        COPPER
    }

    /**
     * One attenuation.
     *
     * @param frequencyHertz frequency
     * @param sheetDecibelPerMetre what the sheet says
     * @param fitDecibelPerMetre what the fit gives
     */
    public record Point(double frequencyHertz, double sheetDecibelPerMetre, double fitDecibelPerMetre) {

        /**
         * Residual in dB.
         *
         * @return fit less sheet, dB/m
         */
        public double residualDecibelPerMetre() {
            return fitDecibelPerMetre - sheetDecibelPerMetre;
        }

        /**
         * Residual as a share.
         *
         * @return (fit - sheet)/sheet
         */
        public double relativeResidual() {
            return residualDecibelPerMetre() / sheetDecibelPerMetre;
        }
    }

    // Keeps its own list.
    public DataSheetFit {
        points = List.copyOf(points);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.material.Water;
import cablewright.simulator.notice.Notice;
import java.util.ArrayList;
import java.util.List;

/**
 * Line given by its constants: {@code z = R + s L + k sqrt(s)}, {@code y = G + s C + sum s dC/(1 + s tau)}.
 *
 * <p>Taken at its word to double precision; no geometry stands behind it, so only unevenness can be done to it.
 * Impedance and velocity without loss are {@code sqrt(L/C)} and {@code 1/sqrt(L C)}, relaxations counted where they
 * have not relaxed at the reference frequency.
 *
 * <p>Validity: causal and passive for all s in the right half plane.
 *
 * @param resistanceOhmsPerMetre R, 0 or more
 * @param inductanceHenriesPerMetre L, above 0
 * @param skinOhmsPerMetrePerRootRadian k, 0 or more
 * @param conductanceSiemensPerMetre G, 0 or more
 * @param capacitanceFaradsPerMetre C, above 0
 * @param relaxations Debye terms, may be empty
 */
public record ConstantsSection(
        @Between(least = 0) double resistanceOhmsPerMetre,
        @Above(floor = 0) double inductanceHenriesPerMetre,
        @Between(least = 0) double skinOhmsPerMetrePerRootRadian,
        @Between(least = 0) double conductanceSiemensPerMetre,
        @Above(floor = 0) double capacitanceFaradsPerMetre,
        List<DebyeTerm> relaxations)
        implements CrossSection {

    // Checks the ranges and keeps its own list.
    public ConstantsSection {
        Require.components(
                ConstantsSection.class,
                resistanceOhmsPerMetre,
                inductanceHenriesPerMetre,
                skinOhmsPerMetrePerRootRadian,
                conductanceSiemensPerMetre,
                capacitanceFaradsPerMetre,
                relaxations);
        relaxations = List.copyOf(relaxations);
    }

    /**
     * Line without loss.
     *
     * @param impedanceOhms sqrt(L/C)
     * @param velocityFraction share of the speed of light, above 0 and at most 1
     * @return the line
     */
    public static ConstantsSection lossless(double impedanceOhms, double velocityFraction) {
        Require.above("impedanceOhms", impedanceOhms, 0);
        Require.that(
                velocityFraction > 0 && velocityFraction <= 1,
                "velocityFraction",
                velocityFraction,
                "above 0 and at most 1");
        double slowness = 1 / (velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND);
        return new ConstantsSection(0, impedanceOhms * slowness, 0, 0, slowness / impedanceOhms, List.of());
    }

    @Override
    public void primaryConstants(ContourSamples contour, PrimaryConstants out) {
        series(contour, out.zRe(), out.zIm());
        double[] sRe = contour.sRe();
        double[] sIm = contour.sIm();
        double[] yRe = out.yRe();
        double[] yIm = out.yIm();
        double g = conductanceSiemensPerMetre;
        double c = capacitanceFaradsPerMetre;
        for (int i = 0; i < yRe.length; i++) {
            yRe[i] = g + sRe[i] * c;
        }
        for (int i = 0; i < yIm.length; i++) {
            yIm[i] = sIm[i] * c;
        }
        for (DebyeTerm term : relaxations) {
            addRelaxation(term, sRe, sIm, yRe, yIm);
        }
    }

    private void series(ContourSamples contour, double[] zRe, double[] zIm) {
        double[] sRe = contour.sRe();
        double[] sIm = contour.sIm();
        double r = resistanceOhmsPerMetre;
        double l = inductanceHenriesPerMetre;
        double k = skinOhmsPerMetrePerRootRadian;
        double[] rootRe = contour.root().re;
        double[] rootIm = contour.root().im;
        for (int i = 0; i < zRe.length; i++) {
            zRe[i] = r + sRe[i] * l + k * rootRe[i];
        }
        for (int i = 0; i < zIm.length; i++) {
            zIm[i] = sIm[i] * l + k * rootIm[i];
        }
    }

    private static void addRelaxation(DebyeTerm term, double[] sRe, double[] sIm, double[] yRe, double[] yIm) {
        double c = term.capacitanceFaradsPerMetre();
        double tau = term.relaxationSeconds();
        for (int i = 0; i < yRe.length; i++) {
            double denRe = 1 + tau * sRe[i];
            double denIm = tau * sIm[i];
            double scale = c / (denRe * denRe + denIm * denIm);
            yRe[i] += scale * (sRe[i] * denRe + sIm[i] * denIm);
            yIm[i] += scale * (sIm[i] * denRe - sRe[i] * denIm);
        }
    }

    private double referenceCapacitance() {
        double c = capacitanceFaradsPerMetre;
        for (DebyeTerm term : relaxations) {
            double turn = 2 * Math.PI * REFERENCE_FREQUENCY_HERTZ * term.relaxationSeconds();
            c += term.capacitanceFaradsPerMetre() / (1 + turn * turn);
        }
        return c;
    }

    @Override
    public double loopResistanceOhmsPerMetre() {
        return resistanceOhmsPerMetre;
    }

    @Override
    public double impedanceOhms() {
        return Math.sqrt(inductanceHenriesPerMetre / referenceCapacitance());
    }

    @Override
    public double velocityFraction() {
        return 1
                / (Math.sqrt(inductanceHenriesPerMetre * referenceCapacitance())
                        * PhysicalConstants.LIGHT_METRES_PER_SECOND);
    }

    @Override
    public ConstantsSection scaled(double relativeImpedance) {
        double r = Require.between("relativeImpedance", relativeImpedance, 0.05, 20);
        List<DebyeTerm> terms = new ArrayList<>();
        for (DebyeTerm term : relaxations) {
            terms.add(new DebyeTerm(term.capacitanceFaradsPerMetre() / r, term.relaxationSeconds()));
        }
        return new ConstantsSection(
                resistanceOhmsPerMetre,
                inductanceHenriesPerMetre * r,
                skinOhmsPerMetrePerRootRadian,
                conductanceSiemensPerMetre / r,
                capacitanceFaradsPerMetre / r,
                terms);
    }

    @Override
    public ConstantsSection pinched(double depthFraction) {
        throw refuse("a pinch (depthFraction " + depthFraction + ")");
    }

    @Override
    public ConstantsSection offCentre(double eccentricity) {
        throw refuse("an off-centre core (eccentricity " + eccentricity + ")");
    }

    @Override
    public ConstantsSection wet(WaterDistribution picture, double volumeFraction, Water water) {
        throw refuse("water (volumeFraction " + volumeFraction + ")");
    }

    @Override
    public ConstantsSection atTemperature(double celsius) {
        throw refuse("a temperature (celsius " + celsius + ")");
    }

    @Override
    public ConstantsSection spread(double spacingFactor) {
        throw refuse("spreading (spacingFactor " + spacingFactor + ")");
    }

    private static IllegalArgumentException refuse(String what) {
        return new IllegalArgumentException("A line given by its constants has no geometry or material for " + what
                + " to act on; choose a cable type with a cross-section, or describe this one by its data sheet.");
    }

    @Override
    public SectionDrawing drawing() {
        return new SectionDrawing.Unknown();
    }

    @Override
    public List<Notice> notices(double highestFrequencyHertz) {
        return List.of();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.PhysicalConstants;
import java.util.Optional;

/**
 * Two equal round wires side by side, twisted.
 *
 * <p>d wire diameter, s distance of centres, {@code x = s/d}: {@code L = (mu0/pi) acosh x},
 * {@code C = pi eps/acosh x} per metre of wire, exact. The current crowds by {@code F = x/sqrt(x^2 - 1)} at skin
 * effect; the DC inductance exceeds the even-current one by {@code (mu0/pi)(ln 2x - acosh x)}. Twist makes each metre
 * of cable hold k metres of wire.
 *
 * <p>Neighbouring pairs add the eddy currents of {@link PairBundle}; what else they and a shield do is in the fitted
 * permittivity.
 *
 * <p>Source: Ramo, Whinnery, Van Duzer, 3rd ed., table 8.09 (from memory).
 *
 * @param wireDiameterMetres d
 * @param nominalSpacingMetres distance of centres as made, more than d
 * @param spacingMetres distance of centres now, more than d
 * @param insulationDiameterMetres over the insulation of one wire, d or more
 * @param takeUp k, metres of wire in a metre of cable, 1 to 1.5
 * @param impedanceFactor what unevenness multiplies L by and divides C by
 * @param bundle the other pairs of the cable, if there are any
 */
public record PairGeometry(
        @Above(floor = 0) double wireDiameterMetres,
        @Above(floor = 0) double nominalSpacingMetres,
        @Above(floor = 0) double spacingMetres,
        @Above(floor = 0) double insulationDiameterMetres,
        @Between(least = 1, most = 1.5) double takeUp,
        @Between(least = 0.05, most = 20) double impedanceFactor,
        Optional<PairBundle> bundle) {

    // Checks the ranges.
    public PairGeometry {
        Require.components(
                PairGeometry.class,
                wireDiameterMetres,
                nominalSpacingMetres,
                spacingMetres,
                insulationDiameterMetres,
                takeUp,
                impedanceFactor,
                bundle);
        Require.above("nominalSpacingMetres", nominalSpacingMetres, wireDiameterMetres);
        Require.above("spacingMetres", spacingMetres, wireDiameterMetres);
        Require.atLeast("insulationDiameterMetres", insulationDiameterMetres, wireDiameterMetres);
        double s = nominalSpacingMetres;
        bundle.ifPresent(others -> Require.above("pitchMetres", others.pitchMetres(), s));
    }

    PairGeometry pressed(double depthFraction) {
        Require.below("depthFraction", depthFraction, 0, 1);
        return at(spacingMetres - depthFraction * (spacingMetres - wireDiameterMetres));
    }

    PairGeometry spread(double factor) {
        return at(spacingMetres * Require.between("spacingFactor", factor, 1, 50));
    }

    private PairGeometry at(double spacing) {
        return with(spacing, impedanceFactor, bundle);
    }

    PairGeometry among(PairBundle others) {
        return with(spacingMetres, impedanceFactor, Optional.of(others));
    }

    PairGeometry scaled(double relativeImpedance) {
        return with(spacingMetres, impedanceFactor * relativeImpedance, bundle);
    }

    private PairGeometry with(double spacing, double factor, Optional<PairBundle> others) {
        return new PairGeometry(
                wireDiameterMetres, nominalSpacingMetres, spacing, insulationDiameterMetres, takeUp, factor, others);
    }

    private static double acosh(double x) {
        double above = x - 1;
        return Math.log1p(above + Math.sqrt(above * (above + 2)));
    }

    private double ratio() {
        return spacingMetres / wireDiameterMetres;
    }

    /** L in mu0/pi, C in pi eps over it. */
    double shape() {
        return acosh(ratio()) * impedanceFactor;
    }

    double nominalShape() {
        return acosh(nominalSpacingMetres / wireDiameterMetres);
    }

    public double bareShape() {
        return acosh(ratio());
    }

    /** Per metre of wire. */
    double inductanceHenriesPerMetre() {
        return PhysicalConstants.MU_0 / Math.PI * shape();
    }

    /** Per metre of wire. */
    double vacuumCapacitanceFaradsPerMetre() {
        return Math.PI * PhysicalConstants.EPSILON_0 / shape();
    }

    /** F of each wire, by the other wire of the pair. */
    double ownCrowding() {
        double x = ratio();
        return x / Math.sqrt((x - 1) * (x + 1));
    }

    /** F of each wire, by all others. */
    double crowding() {
        return ownCrowding() + neighbourCrowding();
    }

    /** k of the other pairs; it falls as the square of the spacing over which the pair is spread. */
    double neighbourCrowding() {
        if (bundle.isEmpty()) {
            return 0;
        }
        double ratio = spacingMetres / nominalSpacingMetres;
        return bundle.get().crowding(wireDiameterMetres, nominalSpacingMetres) / (ratio * ratio);
    }

    /** Excess DC inductance in mu0/pi for the pair, which is mu0/(2 pi) for each wire; with k of the other pairs. */
    double excess(double neighbourCrowding) {
        return Math.log(2 * ratio()) - bareShape() + neighbourCrowding / 2;
    }
}

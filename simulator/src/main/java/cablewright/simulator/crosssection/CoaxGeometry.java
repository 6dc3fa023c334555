// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Below;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.PhysicalConstants;

/**
 * Two circles, one within the other, perhaps off centre and pressed.
 *
 * <p>d core diameter, D inner diameter of the outer conductor, c offset of the axes,
 * {@code X = (D^2 + d^2 - 4 c^2)/(2 D d)}: {@code L = (mu0/2pi) acosh X}, {@code C = 2 pi eps/acosh X}; exact, and
 * ln(D/d) for c = 0. The surface current crowds by {@code coth u1} on the core and {@code coth u2} on the outer
 * conductor: {@code x1 = (r2^2 - r1^2 - c^2)/(2c)}, {@code x2 = x1 + c}, {@code A = sqrt(x2^2 - r2^2)},
 * {@code coth u1 = x1/A}, {@code coth u2 = x2/A}.
 *
 * <p>Pressed from one side, the outer conductor is taken as a smaller circle of diameter {@code D - delta} that still
 * touches its old place on the far side, {@code delta = depth (1 - e)(D - d)/2}, so the gap on the pressed side (the
 * side to which the core may already lie) shrinks to {@code (1 - depth)} of what it was: depth 1 is contact. The
 * metal keeps its DC resistance.
 *
 * <p>Source: B. C. Wadell, Transmission Line Design Handbook, sec. 3.2 (from memory); crowding derived in bipolar
 * coordinates and equal to H. A. Wheeler's rule, Proc. IRE 30 (1942) 412-424.
 *
 * @param coreDiameterMetres d
 * @param outerDiameterMetres D before pressing, more than d
 * @param eccentricity e = 2c/(D - d) before pressing, 0 to less than 1
 * @param pressedDepthFraction share of the gap taken by the press, 0 to less than 1
 * @param impedanceFactor what unevenness multiplies L by and divides C by
 */
public record CoaxGeometry(
        @Above(floor = 0) double coreDiameterMetres,
        @Above(floor = 0) double outerDiameterMetres,
        @Below(least = 0, ceiling = 1) double eccentricity,
        @Below(least = 0, ceiling = 1) double pressedDepthFraction,
        @Between(least = 0.05, most = 20) double impedanceFactor) {

    // Checks the ranges.
    public CoaxGeometry {
        Require.components(
                CoaxGeometry.class,
                coreDiameterMetres,
                outerDiameterMetres,
                eccentricity,
                pressedDepthFraction,
                impedanceFactor);
        Require.above("outerDiameterMetres", outerDiameterMetres, coreDiameterMetres);
    }

    /**
     * Even, concentric circles.
     *
     * @param coreDiameterMetres d
     * @param outerDiameterMetres D
     */
    public CoaxGeometry(double coreDiameterMetres, double outerDiameterMetres) {
        this(coreDiameterMetres, outerDiameterMetres, 0, 0, 1);
    }

    CoaxGeometry pressed(double depthFraction) {
        Require.below("depthFraction", depthFraction, 0, 1);
        double depth = pressedDepthFraction + depthFraction - pressedDepthFraction * depthFraction;
        return new CoaxGeometry(coreDiameterMetres, outerDiameterMetres, eccentricity, depth, impedanceFactor);
    }

    CoaxGeometry shifted(double moreEccentricity) {
        Require.below("eccentricity", moreEccentricity, 0, 1);
        double both = eccentricity + moreEccentricity - eccentricity * moreEccentricity;
        return new CoaxGeometry(coreDiameterMetres, outerDiameterMetres, both, pressedDepthFraction, impedanceFactor);
    }

    CoaxGeometry scaled(double relativeImpedance) {
        return new CoaxGeometry(
                coreDiameterMetres,
                outerDiameterMetres,
                eccentricity,
                pressedDepthFraction,
                impedanceFactor * relativeImpedance);
    }

    private double gap() {
        return 0.5 * (outerDiameterMetres - coreDiameterMetres);
    }

    /** By how much the outer circle shrank. */
    double pressedDepthMetres() {
        return pressedDepthFraction * (1 - eccentricity) * gap();
    }

    double pressedDiameterMetres() {
        return outerDiameterMetres - pressedDepthMetres();
    }

    /** Offset of the core from the middle of the (pressed) outer circle. */
    double offsetMetres() {
        return eccentricity * gap() + 0.5 * pressedDepthMetres();
    }

    /** Shape factor acosh X, without the unevenness. */
    private double bareShape() {
        double big = pressedDiameterMetres();
        double d = coreDiameterMetres;
        double twice = 2 * offsetMetres();
        double aboveOne = (big - d - twice) * (big - d + twice) / (2 * big * d);
        return Math.log1p(aboveOne + Math.sqrt(aboveOne * (aboveOne + 2)));
    }

    /** L in mu0/(2 pi), C in 2 pi eps over it. */
    double shape() {
        return bareShape() * impedanceFactor;
    }

    double inductanceHenriesPerMetre() {
        return PhysicalConstants.MU_0 / (2 * Math.PI) * shape();
    }

    double vacuumCapacitanceFaradsPerMetre() {
        return 2 * Math.PI * PhysicalConstants.EPSILON_0 / shape();
    }

    private double twiceDistanceTimesOffset() {
        double r2 = pressedDiameterMetres();
        double c = 2 * offsetMetres();
        double x2 = 0.25 * (r2 * r2 - coreDiameterMetres * coreDiameterMetres + c * c);
        return Math.sqrt(x2 * x2 - 0.25 * c * c * r2 * r2);
    }

    /** F of the core: how much its skin-effect resistance grows as the current crowds. */
    double coreCrowding() {
        double r2 = pressedDiameterMetres();
        double c = 2 * offsetMetres();
        return 0.25 * (r2 * r2 - coreDiameterMetres * coreDiameterMetres - c * c) / twiceDistanceTimesOffset();
    }

    /** F of the outer conductor for crowding alone. */
    double outerCrowding() {
        double r2 = pressedDiameterMetres();
        double c = 2 * offsetMetres();
        return 0.25 * (r2 * r2 - coreDiameterMetres * coreDiameterMetres + c * c) / twiceDistanceTimesOffset();
    }

    /** What the shorter way around a pressed circle multiplies the skin-effect resistance by. */
    double outerShortening() {
        return outerDiameterMetres / pressedDiameterMetres();
    }

    /**
     * How the excess DC inductance ln(D/d) - acosh X compares with its first-order value, half the crowding; 1 if
     * none.
     */
    double excessShare() {
        double half = 0.5 * (coreCrowding() + outerCrowding() - 2);
        double excess = Math.log(pressedDiameterMetres() / coreDiameterMetres) - bareShape();
        return half < 1e-9 ? 1 : excess / half;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.surface.TubeShield;
import java.util.OptionalDouble;

/**
 * What bending does to the tube around a coax.
 *
 * <p>A thin tube of mean radius r and wall t bent to curvature κ becomes oval, {@code b(1 + ζ cos 2θ)} with
 * {@code ζ = κ² r⁴ (1 − ν²)/t²}, and folds at {@code ζ = 2/9}, where its bending moment is greatest: the least radius of bend is
 * {@code Rmin = (3/√2) r² √(1 − ν²)/t}, so {@code ζ = (2/9)(Rmin/R)²}. L. G. Brazier, "On the flexure of thin cylindrical shells
 * and other thin sections", Proc. R. Soc. London A 116 (1927) 104–114 (from memory), ν = 0.33. Foam within holds the tube up, so
 * this is on the safe side; what makers allow for hardline lies near it (tested).
 *
 * <p>Around a core of radius a the oval of unchanged circumference has, to second order in ζ (derived here by perturbing the
 * boundary; exact solutions in the tests),
 * {@code ln(b/a) − ζ²(5/4 + (b⁴ + a⁴)/(b⁴ − a⁴))} in place of ln(b/a): impedance falls, by 6 to 8 % at the fold, velocity and, to
 * this order, metal losses stay.
 *
 * <p>Bent further the tube folds and its wall is pressed toward the core: the depth is taken as {@code 1 − R/Rmin}, at most 0.95
 * (our model, no source: no fold at the limit, contact at no radius).
 */
public final class BentTube {

    private static final double POISSON = 0.33;
    private static final double OVAL_AT_FOLD = 2.0 / 9;
    private static final double DEEPEST = 0.95;

    /** Thinner ones are modelled as tubes but stand for braids and foils, which do not fold that way. */
    private static final double LEAST_WALL_OVER_RADIUS = 0.05;

    private BentTube() {}

    /**
     * Returns the radius of bend at which a coax's tube folds.
     *
     * @param section a cross-section
     * @return radius to the axis [m]; empty where there is no tube whose wall is known
     */
    public static OptionalDouble leastRadiusMetres(CrossSection section) {
        if (section instanceof CoaxSection coax && coax.shield() instanceof TubeShield tube) {
            double wall = tube.wallMetres();
            double mean = tube.innerRadiusMetres() + wall / 2;
            if (wall >= LEAST_WALL_OVER_RADIUS * tube.innerRadiusMetres()) {
                return OptionalDouble.of(3 / Math.sqrt(2) * mean * mean * Math.sqrt(1 - POISSON * POISSON) / wall);
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * Bends a coax.
     *
     * @param section a coax, by geometry or by an equivalent one
     * @param tightness least radius over that of the bend, 0 to 1000; above 1 it folds
     * @return the bent cross-section
     * @throws IllegalArgumentException for anything but a coax
     */
    public static CrossSection bent(CrossSection section, double tightness) {
        Require.between("tightness", tightness, 0, 1000);
        CrossSection coax = section instanceof FittedSection sheet ? sheet.equivalent() : section;
        if (!(coax instanceof CoaxSection)) {
            throw new IllegalArgumentException(
                    "a kink needs a tube around a core; on a pair or a line known by its" + " constants use a pinch");
        }
        CoaxGeometry geometry = ((CoaxSection) coax).geometry();
        double zeta = OVAL_AT_FOLD * Math.min(1, tightness * tightness);
        double factor = ovalFactor(geometry.coreDiameterMetres() / geometry.outerDiameterMetres(), zeta);
        CrossSection folded = tightness > 1 ? section.pinched(Math.min(DEEPEST, 1 - 1 / tightness)) : section;
        return folded.scaled(factor);
    }

    /** Impedance of the oval over that of the circle, for a core of so much of the diameter. */
    static double ovalFactor(double coreShare, double zeta) {
        double fourth = coreShare * coreShare * coreShare * coreShare;
        return 1 - zeta * zeta * (1.25 + (1 + fourth) / (1 - fourth)) / -Math.log(coreShare);
    }
}

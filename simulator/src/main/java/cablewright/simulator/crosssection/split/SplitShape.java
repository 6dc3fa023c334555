// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.split;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.material.PhysicalConstants;
import java.util.OptionalDouble;

/**
 * What becomes of two like pairs when each circuit uses one wire of each: by symmetry two modes, the circuits' currents alike
 * (even) or opposite (odd), each a line like the pair's own with L multiplied and C divided by a factor.
 *
 * <p>With A = acosh(s/d) the pair's own shape, s its spacing, d the wire and h the pitch, all wires thin but for A:
 *
 * <ul>
 *   <li>twisted: the odd mode carries like currents in both pairs as made, so it is the pair itself, factor 1; the even mode
 *       is the circuit of one pair against the other, 1 + 2 ln(h/s)/A, since the mean of ln distance over a turn is that of
 *       the middles;
 *   <li>quad: the even mode is the pair itself; the odd one is the circuit of one diagonal against the other, 1 − ln 2/A;
 *   <li>straight: (acosh(h/d) ± ½ ln(1 + h²/s²))/A.
 * </ul>
 *
 * <p>Wires keep their losses and the dielectric; far from other conductors. The even factor is the greater one when the
 * neighbour's wires are named so that it hears a like voltage. Source: derived from the inductances of thin wires (C. R. Paul,
 * Analysis of Multiconductor Transmission Lines, 2nd ed., from memory); a test holds it to an engine of coupled lines, which has the
 * same wires and no such closed form.
 *
 * @param layout how the wires lie
 * @param pitchOverSpacing h/s, 1.2 to 6; empty for a quad, which has none
 */
public record SplitShape(
        SplitLayout layout,
        @Between(least = SplitShape.LEAST_PITCH, most = SplitShape.MOST_PITCH) OptionalDouble pitchOverSpacing) {

    /** Least h/s: closer, wires of two pairs would meet. */
    public static final double LEAST_PITCH = 1.2;

    /** Most h/s. */
    public static final double MOST_PITCH = 6;

    /** Checks the ranges. */
    public SplitShape {
        Require.components(SplitShape.class, layout, pitchOverSpacing);
        if (layout == SplitLayout.QUAD && pitchOverSpacing.isPresent()) {
            throw new IllegalArgumentException("pitchOverSpacing is " + pitchOverSpacing.getAsDouble()
                    + "; a quad has none, since its diagonal is the pair's own spacing: leave it out");
        }
        if (layout != SplitLayout.QUAD && pitchOverSpacing.isEmpty()) {
            throw new IllegalArgumentException("pitchOverSpacing is missing; layout " + layout + " needs it, from "
                    + LEAST_PITCH + " to " + MOST_PITCH);
        }
    }

    /**
     * The two modes.
     *
     * @param even what L is multiplied and C divided by where the circuits' currents are alike
     * @param odd the same where they are opposite
     */
    public record Modes(double even, double odd) {}

    /**
     * Returns which mode is the circuit of one pair as made against the other.
     *
     * @return whether it is the even one
     */
    public boolean pairAgainstPairIsEven() {
        return layout != SplitLayout.QUAD;
    }

    /**
     * Works out the modes of split pairs.
     *
     * @param section the pair as made
     * @return the factors
     * @throws IllegalArgumentException if it is no pair, or its wires would meet
     */
    public Modes modes(CrossSection section) {
        double shape = shape(section);
        // s/d of the round wires that have this shape.
        double apart = Math.cosh(shape);
        if (layout == SplitLayout.QUAD) {
            if (apart <= Math.sqrt(2)) {
                throw new IllegalArgumentException("layout is QUAD; the pair's wires stand " + apart
                        + " diameters apart, so those of a quad would touch: it takes more than " + Math.sqrt(2));
            }
            return new Modes(1, 1 - Math.log(2) / shape);
        }
        double pitch = pitchOverSpacing.getAsDouble();
        if (layout == SplitLayout.TWISTED) {
            return new Modes(1 + 2 * Math.log(pitch) / shape, 1);
        }
        double x = pitch * apart;
        double own = Math.log(x + Math.sqrt(x * x - 1));
        double shared = Math.log1p(pitch * pitch) / 2;
        return new Modes((own + shared) / shape, (own - shared) / shape);
    }

    /**
     * Returns what a split stretch looks like to a wave that comes to it while nothing comes back on the neighbour: with ρ half
     * of the sum of both modes' reflections, (1 + ρ)/(1 − ρ) times the pair's impedance.
     *
     * @param section the pair as made
     * @return the pair scaled to that impedance, for drawings and figures
     */
    public CrossSection shown(CrossSection section) {
        Modes modes = modes(section);
        double rho = ((modes.even() - 1) / (modes.even() + 1) + (modes.odd() - 1) / (modes.odd() + 1)) / 2;
        return section.scaled((1 + rho) / (1 - rho));
    }

    static double shape(CrossSection section) {
        if (section instanceof PairSection pairSection) {
            return pairSection.geometry().bareShape();
        }
        if (section instanceof FittedSection fittedSection
                && ((FittedSection) section).equivalent() instanceof PairSection) {
            return shape(fittedSection.equivalent());
        }
        if (section instanceof ConstantsSection) {
            return Math.PI * section.impedanceOhms() / (PhysicalConstants.ETA_0 * section.velocityFraction());
        }
        throw new IllegalArgumentException("a coax has no pair to split; put the split on a pair");
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.split;

import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.material.PhysicalConstants;

/**
 * The circuit of both wires of a pair together against what surrounds the pair, and what it makes of a wire that is broken.
 *
 * <p>Wires of shape A = acosh(s/d), a spacing s apart, in the middle of a round conductor of radius S:
 * Zcm = (η₀/2π)(ln(S/s) + A/2) v/c for the mean of their voltages over the sum of their currents (derived from the inductances of
 * thin wires within a cylinder, C. R. Paul, Analysis of Multiconductor Transmission Lines, 2nd ed., from memory). Where one wire
 * is broken its current is zero, so the sum of the currents is twice that of the pair, and the whole of it goes into the common
 * mode on both sides: the break stands in series with the pair as 4(Z₁ + Z₂), with Z₁ and Z₂ what the common mode meets on each
 * side (derived).
 *
 * <ul>
 *   <li>Until the common mode is back from an end, Z₁ = Z₂ = Zcm: a resistance of 8 Zcm.
 *   <li>Slowly, with both ends floating, the wires are capacitors against the surroundings: C l₁l₂/(4(l₁ + l₂)), C that of the
 *       common mode a metre.
 * </ul>
 *
 * <p>Both in series have both limits; what rings in between, as the common mode goes to and fro, is left out. Validity: S well
 * above s; the common mode's field counted as in the pair's own dielectric, so its velocity is the pair's; the pair otherwise
 * balanced. A test holds both limits to an engine of coupled wires.
 *
 * @param impedanceOhms Zcm [Ω]
 * @param capacitanceFaradsPerMetre C [F/m]
 */
public record CommonMode(double impedanceOhms, double capacitanceFaradsPerMetre) {

    /**
     * S/s in a cable of several pairs, whose neighbours stand for what surrounds a pair: their middles lie about two spacings
     * off (common practice, no source).
     */
    public static final double NEIGHBOURS_OVER_SPACING = 2;

    /**
     * Works out the common mode of a pair.
     *
     * @param pair the pair
     * @param surroundingsOverSpacing S/s, above 1
     * @return its common mode
     * @throws IllegalArgumentException if the cross-section is no pair
     */
    public static CommonMode of(CrossSection pair, double surroundingsOverSpacing) {
        double shape = Math.log(surroundingsOverSpacing) + SplitShape.shape(pair) / 2;
        double velocity = pair.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        double ohms = PhysicalConstants.ETA_0 / (2 * Math.PI) * shape * pair.velocityFraction();
        return new CommonMode(ohms, 1 / (ohms * velocity));
    }

    /**
     * Returns the resistance of a broken wire while the common mode is on its way.
     *
     * @return 8 Zcm [Ω]
     */
    public double breakOhms() {
        return 8 * impedanceOhms;
    }

    /**
     * Returns the capacitance across a broken wire for slow signals.
     *
     * @param metresBefore length of pair before the break [m], above 0
     * @param metresBehind length behind it [m], above 0
     * @return capacitance in series with the pair [F]
     */
    public double breakFarads(double metresBefore, double metresBehind) {
        return capacitanceFaradsPerMetre * metresBefore * metresBehind / (4 * (metresBefore + metresBehind));
    }
}

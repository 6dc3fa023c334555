// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.split;

import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.material.PhysicalConstants;

/**
 * The circuit of both wires of a pair together against what surrounds the pair, or against a neighbouring pair, and what it makes
 * of faults of a single wire.
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
 * <p>Where one wire is joined to earth by R, the current into the earth is twice what the pair loses, and all of it comes from the
 * common mode, which both ways carry: across the pair lies 4 R + 4 Z₁Z₂/(Z₁ + Z₂), the dual of the break (derived). Fast, that is
 * 4 R + 2 Zcm, or 4 R + 4 Zcm at an end of the line; slowly, a capacitance C(l₁ + l₂)/4.
 *
 * <p>Where a wire touches a wire of another pair by R, the same holds with the circuit of pair against pair in place of the common
 * mode, and with what the neighbour shows across itself in series (derived). With h the distance of the pairs' middles, that
 * circuit has (η₀/π)(ln(h/s) + A/2) v/c: the mean of ln distance over a turn is that of the middles, so it has half the impedance
 * of the even mode of {@link SplitShape}.
 *
 * <p>Both limits in series have both; what rings in between, as the common mode goes to and fro, is left out. Validity: S well
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
     * Works out the circuit of a pair against a like one beside it, each pair's two wires together.
     *
     * @param pair the pair
     * @param pitchOverSpacing h/s, above 1
     * @return the circuit; its voltage is that between the pairs
     * @throws IllegalArgumentException if the cross-section is no pair
     */
    public static CommonMode againstPair(CrossSection pair, double pitchOverSpacing) {
        double shape = Math.log(pitchOverSpacing) + SplitShape.shape(pair) / 2;
        double velocity = pair.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        double ohms = PhysicalConstants.ETA_0 / Math.PI * shape * pair.velocityFraction();
        return new CommonMode(ohms, 1 / (ohms * velocity));
    }

    /**
     * Returns the resistance across the pair of a contact of one wire while this mode is on its way, without the contact's own.
     *
     * @param metresBefore length of pair before the contact [m], 0 or more
     * @param metresBehind length behind it [m], 0 or more
     * @return 2 Zcm [Ω], 4 Zcm at an end
     */
    public double contactOhms(double metresBefore, double metresBehind) {
        return (metresBefore > 0 && metresBehind > 0 ? 2 : 4) * impedanceOhms;
    }

    /**
     * Returns the capacitance in series with that resistance for slow signals.
     *
     * @param metres length of the pair [m]
     * @return C l/4 [F]
     */
    public double contactFarads(double metres) {
        return capacitanceFaradsPerMetre * metres / 4;
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

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * The other pairs of a cable, in whose wires a pair's field drives eddy currents.
 *
 * <p>A pair of spacing s and current I makes H = (I/2π) s/|r² − u²| at r from its middle, u half of s along it; averaged over
 * the twist, H² = (I s/2π)²/(|r|⁴ − (s/2)⁴). A wire of radius a in such a field is a dipole −2πa² H I2(z)/I0(z), z = a√(sμσ): it
 * takes 4πa Rs H² more resistance at skin effect, and as much reactance. Over the wires of all other pairs this is
 * {@code k = (d² s²/2) Σ <1/(r⁴ − (s/2)⁴)>} of the resistance Rs/(πa) of even current, and it has the first mode of
 * {@link ProximityEffect}: nothing at DC, inductance lower by μ0 k/(2π) at skin effect, causal in between.
 *
 * <p>Two to four pairs stand on a ring, neighbours a pitch apart; more count as a wide bundle, pairs on a hexagonal lattice of
 * that pitch. Wires of a pair that is spread or pressed keep the ratio of pitch and spacing.
 *
 * <p>Validity: first order in the neighbours' wires (what they drive in each other is left out); lays all different, so that no
 * current flows around a neighbour's loop. Source: dipole of a round wire in a transverse field as in J. R. Carson, "Wave
 * propagation over parallel wires: the proximity effect", Phil. Mag. 41 (1921) 607–633 (from memory); the sum is derived here.
 *
 * @param pairs pairs in the cable, this one counted, 2 or more
 * @param pitchMetres distance of the middles of neighbouring pairs, more than the spacing [m]
 */
public record PairBundle(@Between(least = 2, most = 10_000) int pairs, @Above(floor = 0) double pitchMetres) {

    private static final int ON_A_RING = 4;
    private static final int ANGLES = 16;
    private static final int RINGS = 4;

    /** Checks the ranges. */
    public PairBundle {
        Require.components(PairBundle.class, pairs, pitchMetres);
    }

    /**
     * Resistance that the other pairs' wires add at skin effect, over that of even current in the pair's own.
     *
     * @param wireDiameterMetres d [m]
     * @param spacingMetres s as made [m], less than the pitch
     * @return k
     */
    double crowding(double wireDiameterMetres, double spacingMetres) {
        double sum = pairs <= ON_A_RING ? onRing(spacingMetres) : onLattice(spacingMetres);
        return wireDiameterMetres * wireDiameterMetres * spacingMetres * spacingMetres / 2 * sum;
    }

    private double onRing(double spacing) {
        double radius = pitchMetres / (2 * Math.sin(Math.PI / pairs));
        double sum = 0;
        for (int i = 1; i < pairs; i++) {
            sum += mean(2 * radius * Math.sin(Math.PI * i / pairs), spacing);
        }
        return sum;
    }

    private double onLattice(double spacing) {
        double sum = 0;
        for (int i = -RINGS; i <= RINGS; i++) {
            for (int j = -RINGS; j <= RINGS; j++) {
                int rings = (Math.abs(i) + Math.abs(j) + Math.abs(i + j)) / 2;
                if (rings > 0 && rings <= RINGS) {
                    sum += mean(pitchMetres * Math.sqrt(i * i + i * j + j * j), spacing);
                }
            }
        }
        // What lies beyond, spread evenly: ∫ 2πr r^−4 dr over the area of a cell, from the radius that holds the pairs
        // counted.
        double cell = Math.sqrt(3) / 2 * pitchMetres * pitchMetres;
        double counted = (3 * RINGS * (RINGS + 1) + 1) * cell;
        return sum + Math.PI * Math.PI / (cell * counted);
    }

    /** Mean of 1/(r⁴ − (s/2)⁴) where the wire turns about a middle so far away. */
    private static double mean(double distance, double spacing) {
        double half = spacing / 2;
        double own = half * half * half * half;
        double sum = 0;
        for (int k = 0; k < ANGLES; k++) {
            double square = distance * distance
                    + half * half
                    + 2 * distance * half * Math.cos(2 * Math.PI * (k + 0.5) / ANGLES);
            sum += 1 / (square * square - own);
        }
        return sum / ANGLES;
    }
}

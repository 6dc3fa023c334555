// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.material.PhysicalConstants;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the wires of a cable lie across it, and what inductance per metre follows, each wire against the shield.
 *
 * <p>Wires are thin inside a round shield of radius S: with places p_i, distance from the middle d_i, radius r,
 * L_ii = (μ0/2π) ln((S² − d_i²)/(S r)) and L_ij = (μ0/4π) ln((S⁴ + d_i² d_j² − 2 S² p_i·p_j)/(S² |p_i − p_j|²)) (C. R. Paul,
 * Analysis of Multiconductor Transmission Lines, 2nd ed., on wires within a cylindrical shield, from memory). An unshielded
 * cable has whatever surrounds it in place of the shield, some way off; pairs hardly notice where.
 *
 * <p>Twist: wires of a unit (a pair, a quad) turn together around its middle, each unit with a lay of its own, so over a
 * length they meet the wires of another unit at every angle. The mean of a logarithm of distance over a circle is the one
 * from its middle (the field is harmonic), so L_ij between units is that of their middles, exactly; within a unit the part
 * that comes back from the shield is averaged over {@value #ANGLES} angles. What is left out is what does not average away:
 * lays that are alike, and unevenness; a good cable's crosstalk is all of that kind, and here it is none.
 *
 * <p>Wires of a pair lie closer than thin wires may. The radius used is the one with which the pair alone has the inductance
 * of its own cross-section, which is exact for round wires: r = s e^(−A), with A = acosh(s/d) for an even pair.
 */
public final class WireLayout {

    /** Most wires in one cable. */
    public static final int MOST_WIRES = 64;

    /** Where to lay the shield of a cable that has none and nothing near it [m]: it changes a pair by less than 1e-6. */
    public static final double FAR_METRES = 1;

    private static final int ANGLES = 64;

    private final List<Wire> wires;
    private final double radiusMetres;
    private final double shieldMetres;
    private final double takeUp;

    /** A wire at an offset from the middle of its unit. */
    private record Wire(int unit, double middleX, double middleY, double offsetX, double offsetY) {}

    private WireLayout(List<Wire> wires, double radiusMetres, double shieldMetres, double takeUp) {
        this.wires = List.copyOf(wires);
        this.radiusMetres = Require.above("radiusMetres", radiusMetres, 0);
        this.shieldMetres = Require.above("shieldMetres", shieldMetres, 0);
        this.takeUp = takeUp;
        if (wires.isEmpty() || wires.size() > MOST_WIRES) {
            throw new IllegalArgumentException(
                    "the cable has " + wires.size() + " wires; allowed is 1 to " + MOST_WIRES);
        }
        for (int i = 0; i < wires.size(); i++) {
            requirePlace(i);
        }
    }

    /**
     * Lays straight wires.
     *
     * @param wireRadiusMetres radius of each [m]
     * @param places x and y of each, from the middle of the shield [m]
     * @param shieldRadiusMetres radius of the shield [m]
     * @return the layout
     */
    public static WireLayout straight(double wireRadiusMetres, double[][] places, double shieldRadiusMetres) {
        List<Wire> wires = new ArrayList<>();
        for (double[] place : places) {
            wires.add(new Wire(wires.size(), place[0], place[1], 0, 0));
        }
        return new WireLayout(wires, wireRadiusMetres, shieldRadiusMetres, 1);
    }

    /**
     * Lays twisted pairs, each with a lay of its own. Wires 2p and 2p + 1 are pair p.
     *
     * @param pair what each pair is by itself
     * @param middles x and y of each pair's middle, from the middle of the shield [m]
     * @param shieldRadiusMetres radius of the shield, or of what surrounds the cable [m]
     * @return the layout
     */
    public static WireLayout pairs(PairSection pair, double[][] middles, double shieldRadiusMetres) {
        double half = pair.geometry().spacingMetres() / 2;
        double[][] offsets = {{half, 0}, {-half, 0}};
        return twisted(pair, middles, offsets, shieldRadiusMetres);
    }

    /**
     * Lays star quads, each with a lay of its own. Wires 4q and 4q + 1 are the pair on one diagonal of quad q, wires 4q + 2
     * and 4q + 3 that on the other.
     *
     * @param pair what a pair on a diagonal is by itself; its spacing is the diagonal
     * @param middles x and y of each quad's middle, from the middle of the shield [m]
     * @param shieldRadiusMetres radius of the shield, or of what surrounds the cable [m]
     * @return the layout
     */
    public static WireLayout quads(PairSection pair, double[][] middles, double shieldRadiusMetres) {
        double half = pair.geometry().spacingMetres() / 2;
        double[][] offsets = {{half, 0}, {-half, 0}, {0, half}, {0, -half}};
        return twisted(pair, middles, offsets, shieldRadiusMetres);
    }

    /**
     * Lays twisted pairs on a ring, neighbours a pitch apart.
     *
     * @param pair what each pair is by itself
     * @param count how many pairs, 1 or more
     * @param pitchMetres distance of the middles of neighbours [m]
     * @param shieldRadiusMetres radius of the shield, or of what surrounds the cable [m]
     * @return the layout
     */
    public static WireLayout ringOfPairs(PairSection pair, int count, double pitchMetres, double shieldRadiusMetres) {
        double[][] middles = new double[count][2];
        double ring = count == 1 ? 0 : pitchMetres / (2 * Math.sin(Math.PI / count));
        for (int p = 0; p < count; p++) {
            middles[p][0] = ring * Math.cos(2 * Math.PI * p / count);
            middles[p][1] = ring * Math.sin(2 * Math.PI * p / count);
        }
        return pairs(pair, middles, shieldRadiusMetres);
    }

    private static WireLayout twisted(PairSection pair, double[][] middles, double[][] offsets, double shield) {
        List<Wire> wires = new ArrayList<>();
        for (int unit = 0; unit < middles.length; unit++) {
            for (double[] offset : offsets) {
                wires.add(new Wire(unit, middles[unit][0], middles[unit][1], offset[0], offset[1]));
            }
        }
        double takeUp = pair.geometry().takeUp();
        double perMetre = pair.impedanceOhms() / (pair.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
        double shape = Math.PI * perMetre / (takeUp * PhysicalConstants.MU_0);
        double radius = pair.geometry().spacingMetres() * Math.exp(-shape);
        return new WireLayout(wires, radius, shield, takeUp);
    }

    private void requirePlace(int i) {
        Wire wire = wires.get(i);
        double reach = Math.hypot(wire.middleX(), wire.middleY()) + Math.hypot(wire.offsetX(), wire.offsetY());
        if (!(reach + radiusMetres < shieldMetres)) {
            throw new IllegalArgumentException("wire " + i + " reaches " + (reach + radiusMetres)
                    + " m from the middle; the shield lies at " + shieldMetres);
        }
        for (int j = 0; j < i; j++) {
            Wire other = wires.get(j);
            double apart = distance(wire, other);
            double closest = wire.unit() == other.unit()
                    ? apart
                    : apart - Math.hypot(wire.offsetX(), wire.offsetY()) - Math.hypot(other.offsetX(), other.offsetY());
            if (!(closest > 2 * radiusMetres)) {
                throw new IllegalArgumentException("wires " + j + " and " + i + " come within " + closest
                        + " m of each other; it must be more than their diameter, " + 2 * radiusMetres);
            }
        }
    }

    /** Between wires of one unit, or the middles of two. */
    private static double distance(Wire a, Wire b) {
        return a.unit() == b.unit()
                ? Math.hypot(a.offsetX() - b.offsetX(), a.offsetY() - b.offsetY())
                : Math.hypot(a.middleX() - b.middleX(), a.middleY() - b.middleY());
    }

    /**
     * Counts the wires.
     *
     * @return number of wires, the shield not counted
     */
    public int wires() {
        return wires.size();
    }

    /**
     * Works out the inductance per metre of cable.
     *
     * @return L, symmetric, as many rows and columns as wires [H/m]
     */
    public double[][] inductanceHenriesPerMetre() {
        int n = wires.size();
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double share =
                        PhysicalConstants.MU_0 / (2 * Math.PI) * takeUp * shape(wires.get(i), wires.get(j), i == j);
                l[i][j] = share;
                l[j][i] = share;
            }
        }
        return l;
    }

    /** ln of the distance to the image over that to the wire itself. */
    private double shape(Wire a, Wire b, boolean same) {
        double near = same ? radiusMetres : distance(a, b);
        return image(a, b) - Math.log(near);
    }

    private double image(Wire a, Wire b) {
        if (a.unit() != b.unit()) {
            return image(a.middleX(), a.middleY(), b.middleX(), b.middleY());
        }
        double sum = 0;
        for (int k = 0; k < ANGLES; k++) {
            double cos = Math.cos(2 * Math.PI * k / ANGLES);
            double sin = Math.sin(2 * Math.PI * k / ANGLES);
            sum += image(
                    a.middleX() + cos * a.offsetX() - sin * a.offsetY(),
                    a.middleY() + sin * a.offsetX() + cos * a.offsetY(),
                    b.middleX() + cos * b.offsetX() - sin * b.offsetY(),
                    b.middleY() + sin * b.offsetX() + cos * b.offsetY());
        }
        return sum / ANGLES;
    }

    /** ½ ln((S⁴ + a²b² − 2 S² a·b)/S²), which is ln((S² − a²)/S) for a = b. */
    private double image(double ax, double ay, double bx, double by) {
        double s2 = shieldMetres * shieldMetres;
        double squares = (ax * ax + ay * ay) * (bx * bx + by * by);
        double dot = ax * bx + ay * by;
        return 0.5 * Math.log((s2 * s2 + squares - 2 * s2 * dot) / s2);
    }
}

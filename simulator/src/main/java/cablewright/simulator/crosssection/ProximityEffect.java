// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.crosssection.surface.SurfaceImpedance;

/**
 * How unevenly current lies around a round conductor because of its neighbours (proximity effect), as a causal addition
 * to its {@link SurfaceImpedance} Zi that is exact at both ends of the frequency axis.
 *
 * <p>The transverse field of the neighbour drives modes of the wire. Its first mode (a current to and fro) adds
 * {@code s L1 (1 - I2(z)/I0(z))}, its second {@code s L2 (1 - I3(z)/I1(z))}, z the Bessel argument of the wire. By
 * the recurrences of I these are {@code s L1 Rdc/Zi} and {@code (L2/Li)(Zi - Rdc)}, with Li the wire's DC inductance.
 * So with k1 = L1/(2 Li), k2 = L2/Li:
 *
 * <p>{@code Z = Zi + 2 k1 Li s Rdc/Zi + k2 (Zi - Rdc)}.
 *
 * <p>At DC the resistance is Rdc and the inductance {@code Li (1 + 2 k1 + k2)}; high up {@code Z = (1 + k1 + k2) Zi}.
 * The two numbers follow from the known skin-effect factor F and the known excess X of DC over high-frequency
 * inductance (unit: mu0/(2 pi)): {@code k1 + k2 = F - 1}, {@code 2 k1 + k2 = 4 X}.
 *
 * <p>For a tube around its core the same two modes of the current sheet even out below {@code s1 = 4 pi Rdc/mu0} and
 * {@code 2 s1}: {@code Z = Zaa (1 + k1 s/(s + s1) + k2 s/(s + 2 s1))}, with k1 and k2 from the same two equations.
 *
 * <p>{@code 2 Li Rdc} is the square of the slope of the skin effect, and is taken as that of the skin of a clad wire: far up
 * the cladding alone carries both current and modes. Its resistance at DC stays exact, its excess of DC inductance does not.
 *
 * <p>Validity: exact at DC and at full skin effect, and to first order in (radius/distance)^2 everywhere. Against
 * full multipole solutions the resistance of two copper wires is within 0.2 % at s/d = 1.8, 0.5 % at 1.5, 4 % at 1.2;
 * that of an off-centre coax within 0.5 % at e = 0.5, 6 % at 0.8 (tested). Where current crowds extremely (F above
 * about 3) the excess of DC inductance is not kept, only both resistances.
 *
 * <p>Source: mode fields of a wire in a transverse field as in J. R. Carson, "Wave propagation over parallel wires: the
 * proximity effect", Phil. Mag. 41 (1921) 607-633 (from memory); the join of the limits is derived here.
 */
final class ProximityEffect {

    private ProximityEffect() {}

    /**
     * Adds a wire's impedance, with crowding, to z.
     *
     * @param factor skin-effect factor F, 1 or more
     * @param excess X, DC inductance not accounted for by even current, in mu/(2 pi)
     */
    static void addWire(
            PrimaryConstants out,
            ContourSamples contour,
            SurfaceImpedance wire,
            double factor,
            double excess,
            int wires) {
        ContourSamples.Wire samples = contour.wire(wire);
        double rdc = wire.dcResistanceOhmsPerMetre();
        double k = factor - 1;
        double[] zRe = out.zRe();
        double[] zIm = out.zIm();
        if (k <= 0 || rdc == 0) {
            addScaled(zRe, zIm, samples.impedance(), wires * factor);
            return;
        }
        double first = firstMode(factor, excess);
        double second = k - first;
        addScaled(zRe, zIm, samples.impedance(), wires * (1 + second));
        addScaled(zRe, zIm, samples.sOverImpedance(), wires * first * wire.skinSlopeSquared());
        double level = wires * second * rdc;
        for (int i = 0; i < zRe.length; i++) {
            zRe[i] -= level;
        }
    }

    /** Part of F - 1 that the first mode carries; the second carries the rest. */
    private static double firstMode(double factor, double excess) {
        double k = factor - 1;
        return Math.max(0, Math.min(k, 4 * excess - k));
    }

    /**
     * Adds a tube's impedance, with crowding, to z.
     *
     * @param crowding skin-effect factor F of crowding, 1 or more
     * @param excess X, DC inductance not accounted for by even current, in mu0/(2 pi)
     * @param shortening further skin-effect factor, of a shorter way around
     */
    static void addTube(
            PrimaryConstants out,
            ContourSamples contour,
            SurfaceImpedance tube,
            double crowding,
            double excess,
            double shortening) {
        ContourSamples.Tube samples = contour.tube(tube);
        double k = crowding * shortening - 1;
        double[] zRe = out.zRe();
        double[] zIm = out.zIm();
        if (k == 0 || tube.dcResistanceOhmsPerMetre() == 0) {
            addScaled(zRe, zIm, samples.impedance(), 1 + k);
            return;
        }
        double first = firstMode(crowding, excess);
        addScaled(zRe, zIm, samples.impedance(), 1);
        addScaled(zRe, zIm, samples.firstMode(), first);
        addScaled(zRe, zIm, samples.secondMode(), k - first);
    }

    private static void addScaled(double[] zRe, double[] zIm, Samples part, double factor) {
        addScaled(zRe, part.re, factor);
        addScaled(zIm, part.im, factor);
    }

    private static void addScaled(double[] sum, double[] part, double factor) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * part[i];
        }
    }
}

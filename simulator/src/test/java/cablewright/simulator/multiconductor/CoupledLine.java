// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.PrimaryConstants;
import cablewright.simulator.material.PhysicalConstants;
import java.util.Arrays;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * A uniform line of several conductors over a reference: Z(s) = sL + r(s), Y(s) = s d(s) C, with matrices L and C per metre, the
 * impedance r of each conductor by itself, the same for all, and what the dielectric adds, d, the same everywhere. The
 * reference has no loss.
 *
 * <p>Without loss (r = 0, d = 1) L and C may be any. Where they commute, as in one dielectric (C = (1/v²) L^−1) and for two
 * like conductors, losses alike in all conductors leave the modes the same at every frequency, and each is a line by itself.
 * Any other losses ({@link ConductorLosses}) mix the modes, and {@link MixedWave} takes the line as a whole. (C. R. Paul,
 * Analysis of Multiconductor Transmission Lines, 2nd ed., ch. 7, from memory.)
 */
public final class CoupledLine {

    private final double[][] inductance;
    private final double[][] capacitance;
    private final Optional<PairSection> lossLike;
    private final Optional<ConductorLosses> losses;
    private final Modes modes;

    private CoupledLine(
            double[][] inductance,
            double[][] capacitance,
            Optional<PairSection> lossLike,
            Optional<ConductorLosses> losses) {
        this.inductance = copy(inductance);
        this.capacitance = copy(capacitance);
        this.lossLike = lossLike;
        this.losses = losses;
        this.modes = Modes.of(this.inductance, this.capacitance);
        if (losses.isPresent() && losses.get().conductors().size() != inductance.length) {
            throw new IllegalArgumentException("losses has "
                    + losses.get().conductors().size() + " conductors; the line has " + inductance.length);
        }
    }

    /**
     * Makes a line without loss.
     *
     * @param inductance L, symmetric and positive definite [H/m]
     * @param capacitance C in Maxwell's form, negative off the diagonal, symmetric and positive definite, as large [F/m]
     * @return the line
     */
    public static CoupledLine lossless(double[][] inductance, double[][] capacitance) {
        return new CoupledLine(inductance, capacitance, Optional.empty(), Optional.empty());
    }

    /**
     * Makes a line with losses of its own in each conductor, in the reference and in the dielectric, whatever L and C.
     *
     * @param inductance L without the field inside metals, symmetric and positive definite [H/m]
     * @param capacitance C at 100 MHz in Maxwell's form, as large [F/m]
     * @param losses what metals and dielectric add
     * @return the line
     */
    public static CoupledLine lossy(double[][] inductance, double[][] capacitance, ConductorLosses losses) {
        return new CoupledLine(inductance, capacitance, Optional.empty(), Optional.of(losses));
    }

    /**
     * Makes a line without loss in one dielectric, C = (1/v²) L^−1.
     *
     * @param inductance L, symmetric and positive definite [H/m]
     * @param velocityFraction v over that of light, above 0 to 1
     * @return the line
     */
    public static CoupledLine inOneDielectric(double[][] inductance, double velocityFraction) {
        return new CoupledLine(
                inductance, capacitanceOf(inductance, velocityFraction), Optional.empty(), Optional.empty());
    }

    /**
     * Makes a line of wires that have the loss, and stand in the dielectric, of a pair: one pair of the layout, by itself, is
     * exactly that pair.
     *
     * @param layout where the wires lie
     * @param pair the pair whose wires they are
     * @return the line
     */
    public static CoupledLine of(WireLayout layout, PairSection pair) {
        double[][] inductance = layout.inductanceHenriesPerMetre();
        return new CoupledLine(
                inductance, capacitanceOf(inductance, pair.velocityFraction()), Optional.of(pair), Optional.empty());
    }

    private static double[][] capacitanceOf(double[][] inductance, double velocityFraction) {
        if (!(velocityFraction > 0 && velocityFraction <= 1)) {
            throw new IllegalArgumentException(
                    "velocityFraction is " + velocityFraction + "; it must be above 0 and at most 1");
        }
        double v = velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        DMatrixRMaj c = new DMatrixRMaj(inductance);
        if (!CommonOps_DDRM.invert(c)) {
            throw new IllegalArgumentException("inductance is singular; it must be positive definite");
        }
        CommonOps_DDRM.scale(1 / (v * v), c);
        double[][] rows = new double[inductance.length][inductance.length];
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows.length; j++) {
                // An inverse is symmetric but for its last digits.
                rows[i][j] = (c.get(i, j) + c.get(j, i)) / 2;
            }
        }
        return rows;
    }

    private static double[][] copy(double[][] matrix) {
        return Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
    }

    /**
     * Counts the conductors.
     *
     * @return number of conductors, the reference not counted
     */
    public int conductors() {
        return inductance.length;
    }

    /**
     * Returns the inductance per metre.
     *
     * @return a fresh copy of L [H/m]
     */
    public double[][] inductanceHenriesPerMetre() {
        return copy(inductance);
    }

    /**
     * Returns the capacitance per metre.
     *
     * @return a fresh copy of C [F/m]
     */
    public double[][] capacitanceFaradsPerMetre() {
        return copy(capacitance);
    }

    /**
     * Returns how fast each mode travels without loss.
     *
     * @return velocities, one for each conductor [m/s]
     */
    public double[] modeVelocitiesMetresPerSecond() {
        double[] velocities = new double[conductors()];
        for (int m = 0; m < velocities.length; m++) {
            velocities[m] = 1 / Math.sqrt(modes.inductance(m) * modes.capacitance(m));
        }
        return velocities;
    }

    /**
     * Returns the impedance between two conductors of the line without loss while no current flows in the others: for a
     * conductor and the reference Zc_ii, for two Zc_ii + Zc_jj − 2 Zc_ij, with Zc the characteristic impedance matrix.
     *
     * @param from a conductor, from 0
     * @param to another, or {@link Tie#REFERENCE}
     * @return impedance [Ω]
     */
    public double impedanceOhms(int from, int to) {
        double[] across = new double[conductors()];
        across[from] = 1;
        if (to != Tie.REFERENCE) {
            across[to] = -1;
        }
        double sum = 0;
        for (int m = 0; m < across.length; m++) {
            double v = 0;
            for (int i = 0; i < across.length; i++) {
                v += across[i] * modes.voltage(i, m);
            }
            sum += v * v * Math.sqrt(modes.inductance(m) / modes.capacitance(m));
        }
        return sum;
    }

    Modes modes() {
        return modes;
    }

    /** Losses that mix the modes; empty where each mode is a line by itself. */
    Optional<ConductorLosses> mixing() {
        return losses;
    }

    /** Impedance of one conductor by itself and d(s), at each frequency: real and imaginary parts of r, then of d. */
    double[][] loss(double[] sRe, double[] sIm) {
        double[][] loss = new double[4][sRe.length];
        if (lossLike.isEmpty()) {
            Arrays.fill(loss[2], 1);
            return loss;
        }
        PairSection pair = lossLike.get();
        double slowness = 1 / (pair.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
        double l = pair.impedanceOhms() * slowness;
        double c = slowness / pair.impedanceOhms();
        PrimaryConstants whole = pair.primaryConstants(sRe, sIm);
        for (int k = 0; k < sRe.length; k++) {
            loss[0][k] = (whole.zRe()[k] - sRe[k] * l) / 2;
            loss[1][k] = (whole.zIm()[k] - sIm[k] * l) / 2;
            double re = c * sRe[k];
            double im = c * sIm[k];
            double size = re * re + im * im;
            loss[2][k] = (whole.yRe()[k] * re + whole.yIm()[k] * im) / size;
            loss[3][k] = (whole.yIm()[k] * re - whole.yRe()[k] * im) / size;
        }
        return loss;
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof CoupledLine)) {
            return false;
        }
        CoupledLine that = (CoupledLine) other;
        return Arrays.deepEquals(inductance, that.inductance)
                && Arrays.deepEquals(capacitance, that.capacitance)
                && lossLike.equals(that.lossLike)
                && losses.equals(that.losses);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.deepHashCode(inductance) + Arrays.deepHashCode(capacitance);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Require;
import java.util.List;

/**
 * An insulating material, as its relative permittivity {@code eps(s)}, an analytic function of complex frequency.
 *
 * <p>{@code s = sigma + j omega} in rad/s with Re s of 0 or more and s not 0. Every kind here is causal (analytic for
 * Re s above 0), real on the real axis ({@code eps(conj s) = conj eps(s)}) and passive (Re(s eps) of 0 or more).
 * Conduction counts in: {@code sigma/(eps0 s)}.
 */
public sealed interface Dielectric
        permits ConstantLossTangent, WidebandLog, DebyeDielectric, WarmedDielectric, WetDielectric {

    /** Nothing, or dry air (whose 1.0006 is below what any cable figure resolves). */
    Dielectric AIR = new DebyeDielectric(1.0, List.of(), 0.0);

    /**
     * Works out the relative permittivity at each frequency.
     *
     * @param sRe real parts of s, rad/s
     * @param sIm imaginary parts of s, rad/s, same length
     * @param outRe receives real parts, same length
     * @param outIm receives imaginary parts (negative where the material is lossy and Im s is positive), same length
     */
    void relativePermittivity(double[] sRe, double[] sIm, double[] outRe, double[] outIm);

    /**
     * Real part at one frequency of the imaginary axis, what a table calls the dielectric constant.
     *
     * @param frequencyHertz frequency above 0
     * @return Re eps(j 2 pi f)
     */
    default double realPermittivityAt(double frequencyHertz) {
        return single(frequencyHertz)[0];
    }

    /**
     * Loss tangent {@code -Im eps / Re eps} at one frequency.
     *
     * @param frequencyHertz frequency above 0
     * @return tan delta
     */
    default double lossTangentAt(double frequencyHertz) {
        double[] eps = single(frequencyHertz);
        return -eps[1] / eps[0];
    }

    private double[] single(double frequencyHertz) {
        double[] re = new double[1];
        double[] im = new double[1];
        relativePermittivity(new double[1], new double[] {2 * Math.PI * frequencyHertz}, re, im);
        return new double[] {re[0], im[0]};
    }

    /**
     * The material at another temperature, by its thermal expansion.
     *
     * @param celsius temperature, -80 to 150 degrees Celsius
     * @return the warmed material; at 20 degrees Celsius, or for air, the material itself
     */
    default Dielectric atTemperature(double celsius) {
        Require.between("celsius", celsius, -80, 150);
        return celsius == Conductor.BASE_CELSIUS || equals(AIR) ? this : new WarmedDielectric(this, celsius);
    }
}

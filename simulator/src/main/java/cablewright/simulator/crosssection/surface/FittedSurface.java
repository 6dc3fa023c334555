// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.Conductor;

/**
 * Conductor known by two numbers only: {@code Z = sqrt(R^2 + k^2 s)}.
 *
 * <p>R resistance at DC in ohm/m, k skin-effect slope in ohm/m per root of rad/s; high up {@code Z = k sqrt(s)}. For a
 * solid round wire ({@code R = 1/(pi a^2 sigma)}, {@code k = sqrt(mu/sigma)/(2 pi a)}) both ends and the DC inductance
 * {@code k^2/(2R) = mu/(8 pi)} are exact, and in between it is within 7 % of the Bessel form.
 *
 * <p>Causal and passive: {@code R^2 + k^2 s} lies in the right half plane, its root within an eighth turn of the axis.
 *
 * <p>Source: the two limits are Ramo, Whinnery, Van Duzer, 3rd ed., ch. 4 (from memory); the join is derived here.
 *
 * @param dcResistanceOhmsPerMetre R, 0 or more
 * @param skinOhmsPerMetrePerRootRadian k, 0 or more
 * @param temperatureCoefficientPerKelvin relative rise of resistivity per kelvin from 20 degrees Celsius
 */
public record FittedSurface(
        @Between(least = 0) double dcResistanceOhmsPerMetre,
        @Between(least = 0) double skinOhmsPerMetrePerRootRadian,
        @Between(least = -0.01, most = 0.01) double temperatureCoefficientPerKelvin)
        implements SurfaceImpedance {

    // Checks the ranges.
    public FittedSurface {
        Require.components(
                FittedSurface.class,
                dcResistanceOhmsPerMetre,
                skinOhmsPerMetrePerRootRadian,
                temperatureCoefficientPerKelvin);
    }

    @Override
    public void evaluate(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        double k2 = skinOhmsPerMetrePerRootRadian * skinOhmsPerMetrePerRootRadian;
        double r2 = dcResistanceOhmsPerMetre * dcResistanceOhmsPerMetre;
        for (int i = 0; i < sRe.length; i++) {
            double re = r2 + k2 * sRe[i];
            double im = k2 * sIm[i];
            double root = Math.sqrt(0.5 * (Math.sqrt(re * re + im * im) + re));
            outRe[i] = root;
            outIm[i] = root == 0 ? 0 : 0.5 * im / root;
        }
    }

    @Override
    public double dcInductanceHenriesPerMetre() {
        double k = skinOhmsPerMetrePerRootRadian;
        return k == 0 ? 0 : 0.5 * k * k / dcResistanceOhmsPerMetre;
    }

    @Override
    public FittedSurface atTemperature(double celsius) {
        Require.between("celsius", celsius, -80, 150);
        double growth = 1 + temperatureCoefficientPerKelvin * (celsius - Conductor.BASE_CELSIUS);
        return new FittedSurface(
                dcResistanceOhmsPerMetre * growth,
                skinOhmsPerMetrePerRootRadian * Math.sqrt(growth),
                temperatureCoefficientPerKelvin);
    }
}

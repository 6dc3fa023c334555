// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import java.util.Arrays;
import java.util.List;

/**
 * Sum of relaxations and conduction: {@code eps(s) = einf + sum strength_k/(1 + s tau_k) + sigma/(eps0 s)}.
 *
 * <p>Validity: exact for what it describes, any s in the right half plane except 0.
 *
 * <p>Source: P. Debye, Polar Molecules (1929), the law of one relaxation (from memory).
 *
 * @param permittivityAtInfinity einf, above 0 (a published fit may set it slightly below 1)
 * @param poles relaxations, may be empty
 * @param conductivitySiemensPerMetre sigma, 0 or more
 */
public record DebyeDielectric(
        @Above(floor = 0) double permittivityAtInfinity,
        List<DebyePole> poles,
        @Between(least = 0) double conductivitySiemensPerMetre)
        implements Dielectric {

    public DebyeDielectric {
        Require.components(DebyeDielectric.class, permittivityAtInfinity, poles, conductivitySiemensPerMetre);
        poles = List.copyOf(poles);
    }

    @Override
    public void relativePermittivity(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        Arrays.fill(outRe, permittivityAtInfinity);
        Arrays.fill(outIm, 0.0);
        for (DebyePole pole : poles) {
            addRelaxation(pole, sRe, sIm, outRe, outIm);
        }
        if (conductivitySiemensPerMetre > 0) {
            double scale = conductivitySiemensPerMetre / PhysicalConstants.EPSILON_0;
            for (int i = 0; i < sRe.length; i++) {
                double share = scale / (sRe[i] * sRe[i] + sIm[i] * sIm[i]);
                outRe[i] += share * sRe[i];
                outIm[i] -= share * sIm[i];
            }
        }
    }

    private static void addRelaxation(DebyePole pole, double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        double tau = pole.relaxationSeconds();
        for (int i = 0; i < sRe.length; i++) {
            double x = 1 + tau * sRe[i];
            double y = tau * sIm[i];
            double share = pole.strength() / (x * x + y * y);
            outRe[i] += share * x;
            outIm[i] -= share * y;
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Below;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * Dielectric whose loss tangent is the same at all frequencies, in its one causal form, a power law.
 *
 * <p>{@code eps(s) = (er / cos d) (s / w0)^(-2 d / pi)}, {@code d = atan(tan delta)}, {@code w0 = 2 pi f0}. On the
 * imaginary axis the angle is -d everywhere, and Re eps at f0 is er.
 *
 * <p>Validity: any s in the right half plane; permittivity grows without bound toward DC, so slowly (0.2 % per decade
 * at tan delta 0.003) that it does not matter for polyethylene.
 *
 * <p>Source: A. Kjartansson, "Constant Q wave propagation and attenuation", J. Geophys. Res. 84 (1979) 4737-4748, the
 * same law for seismic waves (from memory).
 *
 * @param relativePermittivity er at the reference frequency, 1 or more
 * @param lossTangent tan delta, 0 or more and less than 1
 * @param referenceFrequencyHertz f0
 */
public record ConstantLossTangent(
        @Between(least = 1) double relativePermittivity,
        @Below(least = 0, ceiling = 1) double lossTangent,
        @Above(floor = 0) double referenceFrequencyHertz)
        implements Dielectric {

    public ConstantLossTangent {
        Require.components(ConstantLossTangent.class, relativePermittivity, lossTangent, referenceFrequencyHertz);
    }

    @Override
    public void relativePermittivity(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        double angle = Math.atan(lossTangent);
        double exponent = -2 * angle / Math.PI;
        double scale = relativePermittivity / Math.cos(angle);
        double logReference = Math.log(2 * Math.PI * referenceFrequencyHertz);
        for (int i = 0; i < sRe.length; i++) {
            double logMagnitude = 0.5 * Math.log(sRe[i] * sRe[i] + sIm[i] * sIm[i]) - logReference;
            double turn = exponent * Math.atan2(sIm[i], sRe[i]);
            double magnitude = scale * Math.exp(exponent * logMagnitude);
            outRe[i] = magnitude * Math.cos(turn);
            outIm[i] = magnitude * Math.sin(turn);
        }
    }
}

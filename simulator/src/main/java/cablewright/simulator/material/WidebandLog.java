// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Below;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * Dielectric with nearly constant loss tangent between two corner frequencies.
 *
 * <p>{@code eps(s) = einf + m ln[(w2 + s)/(w1 + s)]}, {@code w = 2 pi f}; m and einf follow from er and tan delta at
 * f0: {@code k0 = ln[(f2 + j f0)/(f1 + j f0)]}, {@code m = -tan delta er / Im k0}, {@code einf = er - m Re k0}.
 *
 * <p>Validity: any s in the right half plane; at the corners the loss tangent is halved by construction, so keep f1 a
 * decade below the lowest frequency used and f2 a decade above the highest.
 *
 * <p>Source: Djordjevic, Biljic, Likar-Smiljanic, Sarkar, IEEE Trans. EMC 43 (2001) no. 4, DOI 10.1109/15.974647;
 * Svensson and Dermer, IEEE Trans. Adv. Pack. 24 (2001) no. 2, DOI 10.1109/6040.928754.
 *
 * @param relativePermittivity er at f0, 1 or more
 * @param lossTangent tan delta at f0, 0 or more and less than 1
 * @param referenceFrequencyHertz f0, between the corners
 * @param lowCornerHertz f1
 * @param highCornerHertz f2
 */
public record WidebandLog(
        @Between(least = 1) double relativePermittivity,
        @Below(least = 0, ceiling = 1) double lossTangent,
        @Above(floor = 0) double referenceFrequencyHertz,
        @Above(floor = 0) double lowCornerHertz,
        @Above(floor = 0) double highCornerHertz)
        implements Dielectric {

    public WidebandLog {
        Require.components(
                WidebandLog.class,
                relativePermittivity,
                lossTangent,
                referenceFrequencyHertz,
                lowCornerHertz,
                highCornerHertz);
        Require.above("highCornerHertz", highCornerHertz, lowCornerHertz);
        Require.between("referenceFrequencyHertz", referenceFrequencyHertz, lowCornerHertz, highCornerHertz);
    }

    @Override
    public void relativePermittivity(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        double m = slope();
        double einf = permittivityAtInfinity();
        double w1 = 2 * Math.PI * lowCornerHertz;
        double w2 = 2 * Math.PI * highCornerHertz;
        for (int i = 0; i < sRe.length; i++) {
            double y = sIm[i];
            double upper = w2 + sRe[i];
            double lower = w1 + sRe[i];
            double ratio = (upper * upper + y * y) / (lower * lower + y * y);
            outRe[i] = einf + 0.5 * m * Math.log(ratio);
            outIm[i] = m * (Math.atan2(y, upper) - Math.atan2(y, lower));
        }
    }

    /**
     * Permittivity above both corners.
     *
     * @return einf
     */
    public double permittivityAtInfinity() {
        double f0 = referenceFrequencyHertz;
        double re = Math.log(Math.hypot(highCornerHertz, f0) / Math.hypot(lowCornerHertz, f0));
        return relativePermittivity - slope() * re;
    }

    /**
     * Fall of permittivity per unit of natural logarithm of frequency.
     *
     * @return m
     */
    public double slope() {
        double f0 = referenceFrequencyHertz;
        double im = Math.atan2(f0, highCornerHertz) - Math.atan2(f0, lowCornerHertz);
        return -lossTangent * relativePermittivity / im;
    }
}

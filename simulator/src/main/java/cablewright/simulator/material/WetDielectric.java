// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * A dielectric with water in it.
 *
 * @param host the dry dielectric (or one already wet)
 * @param rule how the two mix
 * @param volumeFraction share of the volume that is water, 0 to 1
 * @param water the water
 */
public record WetDielectric(
        Dielectric host, MixingRule rule, @Between(least = 0, most = 1) double volumeFraction, Water water)
        implements Dielectric {

    public WetDielectric {
        Require.components(WetDielectric.class, host, rule, volumeFraction, water);
    }

    @Override
    public void relativePermittivity(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        double[] waterRe = new double[sRe.length];
        double[] waterIm = new double[sRe.length];
        host.relativePermittivity(sRe, sIm, outRe, outIm);
        water.dielectric().relativePermittivity(sRe, sIm, waterRe, waterIm);
        rule.mix(volumeFraction, sRe, sIm, outRe, outIm, waterRe, waterIm);
    }
}

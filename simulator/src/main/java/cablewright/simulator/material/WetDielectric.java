// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import java.util.Objects;

/**
 * A dielectric with water in it.
 *
 * @param host the dry dielectric (or one already wet)
 * @param rule how the two mix
 * @param volumeFraction share of the volume that is water, 0 to 1
 * @param water the water
 */
public record WetDielectric(Dielectric host, MixingRule rule, double volumeFraction, Water water)
        implements Dielectric {

    public WetDielectric {
        Objects.requireNonNull(host, "host");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(water, "water");
        Limits.within("volumeFraction", volumeFraction, 0, 1);
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

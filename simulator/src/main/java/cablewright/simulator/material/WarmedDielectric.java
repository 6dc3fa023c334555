// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * A dielectric at another temperature: it expands, so fewer molecules stand in each volume.
 *
 * <p>By the law of Clausius and Mossotti {@code g = (er - 1)/(er + 2)} is proportional to density, so with the volume
 * expansion beta the material's er at 100 MHz becomes {@code (1 + 2 g')/(1 - g')}, {@code g' = g/(1 + beta (T - 20))}.
 * The whole contrast is scaled alike: {@code eps'(s) = 1 + (eps(s) - 1) (er' - 1)/(er - 1)}, which keeps causality and
 * passivity. Solid polyethylene then shifts by -3.5e-4 per kelvin (velocity +1.8e-4), foam of 85 % velocity by -1.4e-4
 * (velocity +0.7e-4).
 *
 * <p>Validity: non-polar plastics below their melting range, -50 to 80 degrees Celsius. The expansion is 4.5e-4 per
 * kelvin, low-density polyethylene near room temperature (handbook value, from memory); restraint by the metal and
 * change of loss tangent are left out.
 *
 * <p>Source: C. J. F. Boettcher, Theory of Electric Polarization, 2nd ed., vol. 1 (from memory).
 *
 * @param base the dielectric at 20 degrees Celsius
 * @param celsius its temperature, -80 to 150 degrees Celsius
 */
public record WarmedDielectric(Dielectric base, @Between(least = -80, most = 150) double celsius)
        implements Dielectric {

    /** Volume expansion of low-density polyethylene per kelvin (handbook value, from memory). */
    public static final double VOLUME_EXPANSION_PER_KELVIN = 4.5e-4;

    private static final double REFERENCE_HERTZ = 1e8;

    public WarmedDielectric {
        Require.components(WarmedDielectric.class, base, celsius);
    }

    @Override
    public void relativePermittivity(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        base.relativePermittivity(sRe, sIm, outRe, outIm);
        double scale = contrastScale();
        for (int i = 0; i < outRe.length; i++) {
            outRe[i] = 1 + (outRe[i] - 1) * scale;
            outIm[i] *= scale;
        }
    }

    /**
     * What the contrast to vacuum is multiplied by.
     *
     * @return {@code (er' - 1)/(er - 1)}, 1 at 20 degrees Celsius
     */
    public double contrastScale() {
        double er = base.realPermittivityAt(REFERENCE_HERTZ);
        if (er <= 1) {
            return 1;
        }
        double thinning = 1 / (1 + VOLUME_EXPANSION_PER_KELVIN * (celsius - Conductor.BASE_CELSIUS));
        double contrast = (er - 1) / (er + 2) * thinning;
        return (3 * contrast / (1 - contrast)) / (er - 1);
    }

    @Override
    public Dielectric atTemperature(double newCelsius) {
        return base.atTemperature(newCelsius);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;

/**
 * Liquid water: relaxation by a published law, plus conduction {@code sigma/(eps0 s)}.
 *
 * <p>Typical conductivity at 20 to 25 degrees Celsius (from memory): pure 5.5e-6 S/m, rain 0.001 to 0.01, tap 0.005 to
 * 0.05, sea 4.8. Below 1 GHz water is little more than a permittivity near 80 and a conductor.
 *
 * @param temperatureCelsius temperature, from 0 degrees Celsius to where the law ends (40 or 60)
 * @param conductivitySiemensPerMetre conductivity at that temperature, 0 to 10 S/m
 * @param model law of relaxation
 */
public record Water(
        @Between(least = 0, most = 60) double temperatureCelsius,
        @Between(least = 0, most = 10) @Usual(from = 1e-4, to = 5, byFactors = true) double conductivitySiemensPerMetre,
        WaterModel model) {

    public Water {
        Require.components(Water.class, temperatureCelsius, conductivitySiemensPerMetre, model);
        double lowest = Math.max(0, model.lowestCelsius());
        Require.between("temperatureCelsius", temperatureCelsius, lowest, model.highestCelsius());
    }

    /**
     * Water by its conductivity, with the default law of relaxation.
     *
     * @param temperatureCelsius temperature, 0 to 60 degrees Celsius
     * @param conductivitySiemensPerMetre conductivity at that temperature, 0 to 10 S/m
     */
    public Water(double temperatureCelsius, double conductivitySiemensPerMetre) {
        this(temperatureCelsius, conductivitySiemensPerMetre, WaterModel.KAATZE);
    }

    /**
     * Salt water by its salinity. Only the conduction of the salt counts; the few per cent by which salt lowers the
     * permittivity are left out.
     *
     * <p>{@code sigma(t, S) = sigma(t, 35) R15(S) RT/R15}: the form of A. Stogryn et al. as used by T. Meissner and
     * F. J. Wentz, IEEE Trans. Geosci. Remote Sens. 42 (2004) 1836-1849 (from memory).
     *
     * @param temperatureCelsius temperature, 0 to 40 degrees Celsius
     * @param salinityPsu salinity, 0 to 40 psu (about grams of salt per kilogram)
     * @return the water
     */
    public static Water salt(double temperatureCelsius, double salinityPsu) {
        double t = Require.between("temperatureCelsius", temperatureCelsius, 0, 40);
        double s = Require.between("salinityPsu", salinityPsu, 0, 40);
        double sea = 2.903602 + t * (8.607e-2 + t * (4.738817e-4 + t * (-2.991e-6 + t * 4.3047e-9)));
        double at15 = s * (37.5109 + s * (5.45216 + s * 1.4409e-2)) / (1004.75 + s * (182.283 + s));
        double alpha0 = (6.9431 + s * (3.2841 - s * 9.9486e-2)) / (84.850 + s * (69.024 + s));
        double alpha1 = 49.843 + s * (-0.2276 + s * 0.198e-2);
        double drift = 1 + (t - 15) * alpha0 / (alpha1 + t);
        return new Water(t, sea * at15 * drift, WaterModel.KAATZE);
    }

    /**
     * The water as a dielectric.
     *
     * @return relaxations and conduction
     */
    public DebyeDielectric dielectric() {
        DebyeDielectric pure = model.pure(temperatureCelsius);
        return new DebyeDielectric(pure.permittivityAtInfinity(), pure.poles(), conductivitySiemensPerMetre);
    }
}

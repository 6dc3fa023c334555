// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.Dielectric;
import cablewright.simulator.material.MixingRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What acts on the materials of a cross-section: its temperature, then the water in it.
 *
 * @param celsius temperature of metal and plastic, -80 to 150 degrees Celsius
 * @param soaks water, in the order it came; at most one of each film
 */
public record WetSurroundings(@Between(least = -80, most = 150) double celsius, List<WaterContent> soaks) {

    /** At 20 degrees Celsius and dry. */
    public static final WetSurroundings DRY = new WetSurroundings(Conductor.BASE_CELSIUS, List.of());

    // Rejects what can't be and keeps its own list.
    public WetSurroundings {
        Require.components(WetSurroundings.class, celsius, soaks);
        soaks = List.copyOf(soaks);
    }

    WetSurroundings at(double newCelsius) {
        return new WetSurroundings(newCelsius, soaks);
    }

    /**
     * Adds water. Where water of the same picture is already, the share left dry shrinks again and the new water
     * counts.
     */
    WetSurroundings with(WaterContent soak) {
        if (soak.volumeFraction() == 0) {
            return this;
        }
        List<WaterContent> all = new ArrayList<>(soaks);
        for (int i = 0; i < all.size(); i++) {
            WaterContent old = all.get(i);
            if (old.picture() == soak.picture()) {
                double a = old.volumeFraction();
                double b = soak.volumeFraction();
                all.set(i, new WaterContent(soak.picture(), a + b - a * b, soak.water()));
                return new WetSurroundings(celsius, all);
            }
        }
        all.add(soak);
        return new WetSurroundings(celsius, all);
    }

    Optional<WaterContent> film(WaterDistribution picture) {
        return soaks.stream().filter(soak -> soak.picture() == picture).findFirst();
    }

    double filmFraction(WaterDistribution picture) {
        return film(picture).map(WaterContent::volumeFraction).orElse(0.0);
    }

    /** Share of the volume that is water, of all pictures together. */
    double wetFraction() {
        double wet = 0;
        for (WaterContent soak : soaks) {
            wet += soak.volumeFraction() * (1 - wet);
        }
        return wet;
    }

    /** A conductor at the temperature. */
    SurfaceImpedance warmed(SurfaceImpedance conductor) {
        return celsius == Conductor.BASE_CELSIUS ? conductor : conductor.atTemperature(celsius);
    }

    /** s eps of a dielectric at the temperature, where there is no water. */
    Optional<Samples> drySusceptance(Dielectric base, ContourSamples contour) {
        return soaks.isEmpty() ? Optional.of(contour.susceptance(base.atTemperature(celsius))) : Optional.empty();
    }

    /** The warmed dielectric with the water that is mixed into it (films left out), in fresh arrays. */
    Samples mixed(Dielectric base, ContourSamples contour) {
        Samples dry = contour.of(base.atTemperature(celsius));
        Samples wet = new Samples(contour.size());
        System.arraycopy(dry.re, 0, wet.re, 0, wet.re.length);
        System.arraycopy(dry.im, 0, wet.im, 0, wet.im.length);
        for (WaterContent soak : soaks) {
            if (!soak.picture().isFilm()) {
                MixingRule rule = soak.picture().rule().orElseThrow();
                Samples water = contour.of(soak.water().dielectric());
                rule.mix(soak.volumeFraction(), contour.sRe(), contour.sIm(), wet.re, wet.im, water.re, water.im);
            }
        }
        return wet;
    }
}

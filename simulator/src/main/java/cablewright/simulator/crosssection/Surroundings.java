package cablewright.simulator.crosssection;

import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.Dielectric;
import cablewright.simulator.material.Limits;
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
public record Surroundings(double celsius, List<Soak> soaks) {

    /** At 20 degrees Celsius and dry. */
    public static final Surroundings DRY = new Surroundings(Conductor.BASE_CELSIUS, List.of());

    // Rejects what can't be and keeps its own list.
    public Surroundings {
        Limits.within("celsius", celsius, -80, 150);
        soaks = List.copyOf(soaks);
    }

    Surroundings at(double newCelsius) {
        return new Surroundings(newCelsius, soaks);
    }

    /**
     * Adds water. Where water of the same picture is already, the share left dry shrinks again and the new water
     * counts.
     */
    Surroundings with(Soak soak) {
        if (soak.volumeFraction() == 0) {
            return this;
        }
        List<Soak> all = new ArrayList<>(soaks);
        for (int i = 0; i < all.size(); i++) {
            Soak old = all.get(i);
            if (old.picture() == soak.picture()) {
                double a = old.volumeFraction();
                double b = soak.volumeFraction();
                all.set(i, new Soak(soak.picture(), a + b - a * b, soak.water()));
                return new Surroundings(celsius, all);
            }
        }
        all.add(soak);
        return new Surroundings(celsius, all);
    }

    Optional<Soak> film(WaterPicture picture) {
        return soaks.stream().filter(soak -> soak.picture() == picture).findFirst();
    }

    double filmFraction(WaterPicture picture) {
        return film(picture).map(Soak::volumeFraction).orElse(0.0);
    }

    /** Share of the volume that is water, of all pictures together. */
    double wetFraction() {
        double wet = 0;
        for (Soak soak : soaks) {
            wet += soak.volumeFraction() * (1 - wet);
        }
        return wet;
    }

    /** The warmed dielectric with the water that is mixed into it (films left out), in fresh arrays. */
    Samples mixed(Dielectric base, ContourSamples contour) {
        Samples dry = contour.of(base.atTemperature(celsius));
        Samples wet = new Samples(contour.size());
        System.arraycopy(dry.re, 0, wet.re, 0, wet.re.length);
        System.arraycopy(dry.im, 0, wet.im, 0, wet.im.length);
        for (Soak soak : soaks) {
            if (!soak.picture().isFilm()) {
                MixingRule rule = soak.picture().rule().orElseThrow();
                Samples water = contour.of(soak.water().dielectric());
                rule.mix(soak.volumeFraction(), contour.sRe(), contour.sIm(), wet.re, wet.im, water.re, water.im);
            }
        }
        return wet;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.DebyeDielectric;
import cablewright.simulator.material.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Water in a 75 ohm foam coax, by the mixing formulas of A. Sihvola, Electromagnetic Mixing Formulas (1999, from memory) and
 * exact layers, worked out for water of 80.10304 (20 degrees Celsius).
 *
 * <p>The water model here is 0.13 % higher at 100 MHz, hence the tolerance.
 */
class WetCoaxReferenceTest {

    private static final Water WATER = new Water(20, 0);

    private static CoaxSection foam75() {
        return CoaxSection.solid(
                1.0495321e-3,
                4.572e-3,
                Conductor.COPPER,
                1e-4,
                Conductor.COPPER,
                new ConstantLossTangent(1.384083045, 0, 1e8));
    }

    @ParameterizedTest
    @CsvSource({
        "SERIES_BOUND, 0.01, 74.6306",
        "MAXWELL_GARNETT, 0.01, 73.9439",
        "BRUGGEMAN, 0.01, 73.9247",
        "LOOYENGA, 0.01, 71.8853",
        "CRIM, 0.01, 70.3515",
        "PARALLEL_BOUND, 0.01, 59.8805",
        "SERIES_BOUND, 0.05, 73.1342",
        "MAXWELL_GARNETT, 0.05, 69.9504",
        "BRUGGEMAN, 0.05, 69.4832",
        "LOOYENGA, 0.05, 61.3425",
        "CRIM, 0.05, 56.3750",
        "PARALLEL_BOUND, 0.05, 38.2547",
        "SERIES_BOUND, 0.10, 71.2195",
        "MAXWELL_GARNETT, 0.10, 65.4061",
        "BRUGGEMAN, 0.10, 63.5825",
        "LOOYENGA, 0.10, 51.3796",
        "CRIM, 0.10, 45.1602",
        "PARALLEL_BOUND, 0.10, 29.0022",
        "SERIES_BOUND, 0.20, 67.2268",
        "MAXWELL_GARNETT, 0.20, 57.4614",
        "BRUGGEMAN, 0.20, 50.4358",
        "LOOYENGA, 0.20, 37.9938",
        "CRIM, 0.20, 32.3066",
        "PARALLEL_BOUND, 0.20, 21.3202",
        "FILM_UNDER_SHIELD, 0.05, 74.38995",
        "FILM_UNDER_SHIELD, 0.10, 73.74335",
        "FILM_UNDER_SHIELD, 0.20, 72.32208",
        "FILM_UNDER_SHIELD, 0.50, 66.48018",
        "FILM_ON_CORE, 0.05, 66.48797",
        "FILM_ON_CORE, 0.10, 60.76824",
        "FILM_ON_CORE, 0.20, 52.54268"
    })
    void impedanceFollowsThePictureOfTheWater(WaterDistribution picture, double fraction, double impedance) {
        double wet = foam75().wet(picture, fraction, WATER).impedanceOhms();
        assertEquals(impedance, wet, 0.0007 * impedance);
    }

    @ParameterizedTest
    @CsvSource({
        "MAXWELL_GARNETT, 0.792771",
        "BRUGGEMAN, 0.787477",
        "LOOYENGA, 0.695215",
        "CRIM, 0.638917",
        "PARALLEL_BOUND, 0.433554"
    })
    void velocityFallsWithImpedance(WaterDistribution picture, double velocity) {
        double wet = foam75().wet(picture, 0.05, WATER).velocityFraction();
        assertEquals(velocity, wet, 0.0007 * velocity);
    }

    @Test
    void drenchedCoaxHoldsOnlyWater() {
        for (WaterDistribution picture : WaterDistribution.values()) {
            CoaxSection drowned = foam75().wet(picture, 1, WATER);
            assertEquals(9.8586588, drowned.impedanceOhms(), 0.0007 * 9.86, picture::name);
            assertEquals(0.11173147, drowned.velocityFraction(), 0.0007 * 0.11173147, picture::name);
        }
    }

    @Test
    void noWaterChangesNothing() {
        assertEquals(foam75(), foam75().wet(WaterDistribution.CRIM, 0, WATER));
    }

    @Test
    void waterComesInTwiceAndLeavesTheDryShareOfTheDryShare() {
        CoaxSection once = foam75().wet(WaterDistribution.BRUGGEMAN, 0.28, WATER);
        CoaxSection twice =
                foam75().wet(WaterDistribution.BRUGGEMAN, 0.1, WATER).wet(WaterDistribution.BRUGGEMAN, 0.2, WATER);
        assertEquals(once.impedanceOhms(), twice.impedanceOhms(), 1e-9);
    }

    /** A conducting film under the shield only makes the shield's inside a little smaller, so the loss stays modest. */
    @Test
    void saltFilmUnderTheShieldActsAsMetal() {
        CoaxSection salty = foam75().wet(WaterDistribution.FILM_UNDER_SHIELD, 0.05, Water.salt(20, 35));
        double film = 54.80e-6;
        double smaller = 59.9584915921 * 0.85 * Math.log((4.572e-3 - 2 * film) / 1.0495321e-3);
        double omega = 2 * Math.PI * 1e6;
        PrimaryConstants at = salty.primaryConstants(new double[1], new double[] {omega});
        double impedance = Math.sqrt(salty.geometry().inductanceHenriesPerMetre() * omega / at.yIm()[0]);
        double ideal = Math.sqrt(75 * smaller);
        assertEquals(ideal, impedance, 0.002 * ideal);
        assertTrue(at.yRe()[0] >= 0);
    }

    @Test
    void constantInclusionsMixExactly() {
        DebyeDielectric host = new DebyeDielectric(1.384083045, List.of(), 0);
        CoaxSection coax = CoaxSection.solid(1e-3, 4e-3, Conductor.COPPER, 1e-4, Conductor.COPPER, host);
        double eps =
                Math.pow(coax.wet(WaterDistribution.MAXWELL_GARNETT, 0.3, WATER).velocityFraction(), -2);
        double ei = WATER.dielectric().realPermittivityAt(1e8);
        double expected = 1.384083045
                + 0.9 * 1.384083045 * (ei - 1.384083045) / (ei + 2 * 1.384083045 - 0.3 * (ei - 1.384083045));
        assertEquals(expected, eps, 1e-5 * expected);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OffCentreReelTest {

    private static final CableType HARDLINE = Catalogue.standard().type("hardline-500");

    /** 75 ohm foam of physics.md §2: D 4.572 mm, d 1.0495321 mm, velocity 0.85, copper. */
    private static CableType foam() {
        CoaxSection section = CoaxSection.solid(
                1.0495321e-3,
                4.572e-3,
                Conductor.COPPER,
                0.2e-3,
                Conductor.COPPER,
                new ConstantLossTangent(1.384083045, 0, 1e8));
        return TestLines.type(section);
    }

    private static OffCentreReel.Outcome whole(CableType type, double eccentricity) {
        return new OffCentreReel(type, 100, eccentricity, 0, 100, 5e-9).outcome();
    }

    /** Table of physics.md §2: eccentric coax (Wadell, sec. 3.2, from memory; loss by Wheeler's rule). */
    @ParameterizedTest
    @CsvSource({
        "0.1, 74.679536, -0.002141, 1.007367",
        "0.3, 72.031462, -0.020190, 1.072028",
        "0.5, 66.216744, -0.062197, 1.242019",
        "0.7, 55.710785, -0.147572, 1.694096",
        "0.9, 35.028974, -0.363277, 4.056386",
        "0.95, 25.328401, -0.495090, 7.619911"
    })
    void impedanceLaunchStepAndLossAreThoseOfTheTable(double e, double ohms, double rho, double loss) {
        OffCentreReel.Outcome outcome = whole(foam(), e);
        assertEquals(75, outcome.soundOhms(), 1e-4);
        assertEquals(ohms, outcome.offCentreOhms(), 1e-4);
        assertEquals(rho, outcome.launchReflection(), 2e-6);
        // The table is the skin-effect limit; at 1 GHz what is left of the direct-current resistance makes up to 0.8 %.
        assertEquals(loss, outcome.lossFactor(), 0.009 * loss);
    }

    /** C' = 1/(Z v), and the velocity is unchanged in one dielectric (physics.md §2, exact). */
    @Test
    void capacitancePerMetreTellsWhatTheTraceHides() {
        OffCentreReel.Outcome outcome = whole(foam(), 0.5);
        assertEquals(75 / 66.216744, outcome.offCentreFaradsPerMetre() / outcome.soundFaradsPerMetre(), 1e-6);
        assertEquals(1 / (75 * 0.85 * 299_792_458.0), outcome.soundFaradsPerMetre(), 1e-16);
    }

    @Test
    void traceIsFlatAlongTheReelThoughOneHundredthIsMissingAtTheStart() {
        OffCentreReel.Outcome outcome = whole(HARDLINE, 0.5);
        assertTrue(outcome.launchReflection() < -0.05);
        assertTrue(Math.abs(outcome.betweenVolts()) < 2e-3, "between: " + outcome.betweenVolts());
    }

    @Test
    void mistakeFromHereToThereShowsAFallAndARise() {
        OffCentreReel.Outcome outcome = new OffCentreReel(HARDLINE, 100, 0.5, 40, 60, 5e-9).outcome();
        Curve change = outcome.trace().minus(outcome.soundTrace());
        int first = change.largestBetween(35, 50);
        int second = change.largestBetween(55, 70);
        assertEquals(outcome.launchReflection(), change.y(first), 0.25 * -outcome.launchReflection());
        assertTrue(change.y(second) > 0.03);
        assertEquals(40.6, change.x(first), 0.7);
        assertEquals(60.6, change.x(second), 0.7);
    }

    /** A calibrated step stands at ρ right after the launch: −2 % at 0.3, −6 % at 0.5 (physics.md §2). */
    @Test
    void calibratedStepStandsLowerByTheLaunchReflection() {
        for (double e : new double[] {0.3, 0.5}) {
            OffCentreReel.Outcome outcome = whole(HARDLINE, e);
            double level = outcome.step().minus(outcome.soundStep()).at(3);
            assertEquals(outcome.launchReflection(), level, 0.0015);
        }
    }

    /** A mismatched length between matched ends reflects between 0 and about 2ρ, every v/(2l). */
    @Test
    void sweepOfTheTerminatedReelRipplesToTwiceTheReflection() {
        OffCentreReel.Outcome outcome = whole(HARDLINE, 0.5);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < outcome.returnLoss().count(); k++) {
            least = Math.min(least, outcome.returnLoss().y(k));
        }
        double rho = -outcome.launchReflection();
        double lossless = -20 * Math.log10(2 * rho / (1 + rho * rho));
        // The far end's reflection comes back weaker by 1 to 2 dB, so the best ripple stands a little below 2ρ.
        assertEquals(lossless + 0.6, least, 0.6);
        assertEquals(0.87 * 299_792_458.0 / 200, outcome.rippleHertz(), 1e4);
    }
}

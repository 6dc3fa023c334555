// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterInCableTest {

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

    private static WaterInCable wet(CableType type, WaterDistribution picture, double fraction, double drying) {
        return new WaterInCable(type, 120, 80, 10, picture, fraction, new Water(20, 0), drying, 5e-9);
    }

    /**
     * physics.md §12, 5 and 10 % of water at 20 °C in 75 ohm foam: exact layers, and Maxwell Garnett (Sihvola,
     * Electromagnetic Mixing Formulas, from memory). The tables take 80.10304 for water; the model here has 80.2.
     */
    @ParameterizedTest
    @CsvSource({
        "FILM_UNDER_SHIELD, 0.05, 74.38995",
        "FILM_UNDER_SHIELD, 0.10, 73.74335",
        "FILM_ON_CORE, 0.05, 66.48797",
        "FILM_ON_CORE, 0.10, 60.76824",
        "MAXWELL_GARNETT, 0.05, 69.9504",
        "CRIM, 0.05, 56.3750",
        "PARALLEL_BOUND, 0.05, 38.2547"
    })
    void sameWaterGivesOtherImpedancesAsItLies(WaterDistribution picture, double fraction, double ohms) {
        assertEquals(ohms, wet(foam(), picture, fraction, 0).outcome().wetOhms(), 0.05);
    }

    /** physics.md §12: Maxwell Garnett 5 % gives ρ = −0.034837. */
    @Test
    void entryReflectsAsTheMixtureSays() {
        WaterInCable.Outcome outcome =
                wet(foam(), WaterDistribution.MAXWELL_GARNETT, 0.05, 0).outcome();
        assertEquals(-0.034837, outcome.entryReflection(), 1e-4);
        assertEquals(0.792771, outcome.wetVelocityFraction(), 2e-4);
        assertEquals(10 * 0.85 / 0.792771, outcome.shownMetres(), 0.005);
    }

    @Test
    void sharpEdgesShowAFallAndARiseAndDriedOnesHardlyAny() {
        CableType drop = Catalogue.standard().type("drop-6-foam");
        WaterInCable.Outcome sharp =
                wet(drop, WaterDistribution.MAXWELL_GARNETT, 0.05, 0).outcome();
        WaterInCable.Outcome dried =
                wet(drop, WaterDistribution.MAXWELL_GARNETT, 0.05, 1).outcome();
        Curve change = sharp.trace().minus(sharp.dryTrace());
        Curve faint = dried.trace().minus(dried.dryTrace());
        double fall = change.y(change.largestBetween(79, 84));
        double rise = change.y(change.largestBetween(88, 96));
        assertTrue(fall < -0.012 && rise > 0.01, fall + ", " + rise);
        assertTrue(Math.abs(faint.y(faint.largestBetween(79, 96))) < 0.4 * -fall);
    }

    @Test
    void curveOfTheImpedanceStartsDryAndFalls() {
        Curve curve =
                wet(foam(), WaterDistribution.CRIM, 0.05, 0).impedanceAgainstShare(WaterDistribution.FILM_ON_CORE);
        assertEquals(75, curve.y(0), 1e-4);
        assertEquals(52.54268, curve.at(0.2), 0.05);
        for (int i = 1; i < curve.count(); i++) {
            assertTrue(curve.y(i) < curve.y(i - 1));
        }
    }
}

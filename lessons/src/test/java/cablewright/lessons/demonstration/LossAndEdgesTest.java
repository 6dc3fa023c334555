// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.explanation.visibility.DispersionDelay;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LossAndEdgesTest {

    private static final double DECIBEL_PER_NEPER = 8.68588963807;

    /** Table of physics.md §8 (Wigington and Nahman, 1957, from memory), attenuation at 1 GHz. */
    @ParameterizedTest
    @CsvSource({
        "3, 9.493012e-12, 0.89040656, 0.96524481, 0.98900631",
        "10, 105.47791e-12, 0.64601927, 0.88451887, 0.96336610",
        "40, 1687.6466e-12, 0.06618080, 0.56125883, 0.85423335"
    })
    void edgeIsThatOfTheTable(double decibels, double tau, double at1, double at10, double at100) {
        double found = DispersionDelay.seconds(decibels / DECIBEL_PER_NEPER, 1e9);
        assertEquals(tau, found, 1e-6 * tau);
        assertEquals(at1, LossAndEdges.stepAt(1e-9, found), 1e-7);
        assertEquals(at10, LossAndEdges.stepAt(10e-9, found), 1e-7);
        assertEquals(at100, LossAndEdges.stepAt(100e-9, found), 1e-7);
    }

    /** physics.md §8: half height after 4.637 ps times the square of the decibels at 1 GHz. */
    @Test
    void halfHeightAndRiseGrowWithTheSquareOfTheLoss() {
        CableType drop = Catalogue.standard().type("drop-11-foam");
        LossAndEdges.Outcome near = new LossAndEdges(drop, 100, 1e9).outcome();
        LossAndEdges.Outcome far = new LossAndEdges(drop, 200, 1e9).outcome();
        assertEquals(4.637039645e-12 * near.decibels() * near.decibels(), near.halfSeconds(), 1e-17);
        assertEquals(28.6421176 * near.halfSeconds(), near.riseSeconds(), 1e-6 * near.riseSeconds());
        assertEquals(4, far.halfSeconds() / near.halfSeconds(), 1e-9);
    }

    /** A line of skin effect alone is the law's own line; the edge sent is short, not instant, hence the tolerance. */
    @Test
    void lineOfSkinEffectAloneFollowsTheLaw() {
        ConstantsSection plain = ConstantsSection.lossless(75, 0.85);
        CableType skin = TestLines.type(new ConstantsSection(
                0, plain.inductanceHenriesPerMetre(), 1.5e-5, 0, plain.capacitanceFaradsPerMetre(), List.of()));
        LossAndEdges.Outcome outcome = new LossAndEdges(skin, 200, 1e9).outcome();
        for (double halves : new double[] {1, 2, 5, 20}) {
            double t = halves * outcome.halfSeconds();
            assertEquals(outcome.law().at(t), outcome.exact().at(t), 0.01, halves + " half times");
        }
        assertEquals(outcome.halfSeconds(), outcome.exactHalfSeconds(), 0.03 * outcome.halfSeconds());
    }

    @Test
    void realCoaxIsNearTheLawAndArrivesNoEarlier() {
        CableType air = Catalogue.standard().type("air-line-50");
        LossAndEdges.Outcome outcome = new LossAndEdges(air, 100, 1e9).outcome();
        assertEquals(outcome.halfSeconds(), outcome.exactHalfSeconds(), 0.15 * outcome.halfSeconds());
        assertTrue(Math.abs(outcome.exact().at(0)) < 0.05);
    }
}

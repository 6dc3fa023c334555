// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SplitPairTest {

    private static final CableType PAIR = Catalogue.standard().type("cat-5e");

    /** physics.md §17, illustrative thin-wire figures: 24 AWG (0.5105592 mm), s 0.932 mm, er 2.1. */
    @ParameterizedTest
    @CsvSource({
        "1, 100.02, 0.268, -17.5",
        "1.5, 137.73, 0.347, -15.2",
        "2, 162.85, 0.405, -13.9",
        "3, 197.30, 0.481, -12.4"
    })
    void impedanceAndCrosstalkOfTheSplitCircuitAreThoseOfTheTable(
            double pitch, double ohms, double shared, double decibels) {
        double apart = 0.932 / 0.5105592;
        // At h = s the table's spacing over diameter is 1.8239, so that its first figure is 100.02.
        assertEquals(ohms, SplitPair.pairOhms(pitch * apart, 2.1), 0.1);
        double found = SplitPair.mutualOverOwn(pitch, pitch * apart);
        assertEquals(shared, found, 1e-3);
        assertEquals(decibels, 20 * Math.log10(found / 2), 0.06);
    }

    /** physics.md §3, s/d = 3 in er 2.1: 145.868351 ohm. */
    @Test
    void pairImpedanceIsThatOfTwoWires() {
        assertEquals(145.868351, SplitPair.pairOhms(3, 2.1), 1e-5);
    }

    @Test
    void traceRisesAtTheSplitAndFallsAtTheResplit() {
        SplitPair.Outcome outcome = new SplitPair(PAIR, 60, 20, 35, 1.5, 1e-9).outcome();
        assertEquals(0.130, outcome.reflection(), 0.01);
        Curve trace = outcome.trace();
        assertTrue(trace.at(22) - trace.at(18) > 0.08);
        assertTrue(trace.at(39) - trace.at(33) < -0.06);
    }

    @Test
    void crosstalkStandsFromSplitToResplitOnly() {
        SplitPair.Outcome outcome = new SplitPair(PAIR, 60, 20, 35, 1.5, 1e-9).outcome();
        Curve heard = outcome.crosstalkTrace();
        assertEquals(0, heard.at(15), 1e-3);
        // Loss takes some of it.
        assertEquals(outcome.mutualOverOwn() / 2, outcome.crosstalk(), 0.02);
        assertEquals(0.9 * outcome.crosstalk(), heard.at(27), 0.1 * outcome.crosstalk());
        assertEquals(0, heard.at(45), 0.3 * outcome.crosstalk());
    }

    @Test
    void coaxCanNotBeSplit() {
        CableType coax = Catalogue.standard().type("drop-6-foam");
        assertThrows(IllegalArgumentException.class, () -> new SplitPair(coax, 60, 20, 35, 1.5, 1e-9));
    }
}

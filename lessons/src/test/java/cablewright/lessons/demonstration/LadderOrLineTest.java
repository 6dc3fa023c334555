// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import org.junit.jupiter.api.Test;

class LadderOrLineTest {

    private static final double LIGHT = 299_792_458.0;

    /** physics.md §9: H88 loading, L = 88 mH and C = 94.318182 nF a section, stops at 3493.9049 Hz. */
    @Test
    void loadedCableStopsWhereTheTradeSaysItDoes() {
        LadderSweep loaded = new LadderSweep(4, 88e-3, 94.318182e-9, new Load.Open(), 966);
        assertEquals(3493.9049, loaded.cutoffHertz(), 1e-3);
    }

    @Test
    void moreSectionsPassHigherByTheirNumber() {
        LadderOrLine.Outcome ten = new LadderOrLine(75, 0.85, 10, 10, 50e-9).outcome();
        // f_c = N v/(π l), by hand.
        assertEquals(10 * 0.85 * LIGHT / (Math.PI * 10), ten.cutoffHertz(), 1);
    }

    /** asin(x)/x = 1.01 at x = 0.2425 (series 1 + x²/6 + 3x⁴/40), so λ/section = π/x = 12.95. */
    @Test
    void thirteenSectionsToAWavelengthDelayWithinOnePerCent() {
        LadderOrLine.Outcome outcome = new LadderOrLine(75, 0.85, 10, 50, 50e-9).outcome();
        double x = outcome.onePercentHertz() / outcome.cutoffHertz();
        assertEquals(0.01, x * x / 6 + 3 * Math.pow(x, 4) / 40, 1e-5);
        assertEquals(12.95, outcome.sectionsPerWavelength(), 0.05);
    }

    /**
     * A chain by its image parameters: Γ of N sections of turn θ = 2 asin(x), image impedance R√(1 − x²), closed by R:
     * Z = Zi (R + j Zi tan Nθ)/(Zi + j R tan Nθ) (any text on filters; derived by hand).
     */
    @Test
    void chainReflectsAsItsImageParametersSay() {
        double r = 75;
        LadderSweep ladder = new LadderSweep(7, 1e-6, 1e-6 / (r * r), new Load.Part(Lumped.resistor(r)), r);
        for (double x : new double[] {0.1, 0.35, 0.6, 0.85}) {
            ComplexArray found = ladder.reflection(Frequencies.ofSweep(x * ladder.cutoffHertz()));
            double zi = r * Math.sqrt(1 - x * x);
            double t = Math.tan(7 * 2 * Math.asin(x));
            // |Γ| of Z on R: |Zi² − R²||tan|/|2 R Zi + j (Zi² + R²) tan|.
            double expected = Math.abs(zi * zi - r * r) * Math.abs(t) / Math.hypot(2 * r * zi, (zi * zi + r * r) * t);
            assertEquals(expected, found.magnitude(0), 1e-9, "x = " + x);
        }
    }

    @Test
    void slowPulseTakesAFineChainForALineAndAFastOneDoesNot() {
        LadderOrLine.Outcome slow = new LadderOrLine(75, 0.85, 100, 100, 200e-9).outcome();
        LadderOrLine.Outcome fast = new LadderOrLine(75, 0.85, 100, 100, 5e-9).outcome();
        assertTrue(largestDifference(slow) < 0.05, "slow: " + largestDifference(slow));
        assertTrue(largestDifference(fast) > 0.3, "fast: " + largestDifference(fast));
        assertTrue(slow.lateBy() < 0.001 && fast.lateBy() > 0.1);
    }

    /** Two ways that share no formula: the recursion at each frequency and then back to time, and steps of the trapezoidal rule. */
    @Test
    void chainSteppedInTimeIsTheChainWorkedOutInFrequency() {
        LadderOrLine.Outcome outcome = new LadderOrLine(75, 0.85, 100, 50, 100e-9).outcome();
        Curve stepped = outcome.steppedTrace().orElseThrow();
        for (double metres = -5; metres < 240; metres += 0.5) {
            // The receiver's own delay, some tenths of a nanosecond, is all that lies between them.
            assertEquals(outcome.ladderTrace().at(metres), stepped.at(metres), 0.02, "at " + metres + " m");
        }
    }

    @Test
    void chainThatWouldTakeTooManyStepsIsNotStepped() {
        assertTrue(new LadderOrLine(75, 0.85, 2000, 2000, 20e-9)
                .outcome()
                .steppedTrace()
                .isEmpty());
    }

    private static double largestDifference(LadderOrLine.Outcome outcome) {
        Curve difference = outcome.ladderTrace().minus(outcome.lineTrace());
        return Math.abs(difference.y(difference.largestBetween(0, 1e9)));
    }
}

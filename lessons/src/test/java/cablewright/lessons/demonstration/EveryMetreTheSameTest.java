// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EveryMetreTheSameTest {

    private static final CableType LOSSLESS = TestLines.lossless(75, 0.85 * 299_792_458.0);

    /** physics.md §13: f = v/(2d) at 0.85. */
    @ParameterizedTest
    @CsvSource({"0.3, 424.70598e6", "0.5, 254.82359e6", "1, 127.41179e6", "10, 12.741179e6"})
    void spikeStandsWhereHalfAWaveFitsThePitch(double pitch, double hertz) {
        EveryMetreTheSame.Outcome outcome = new EveryMetreTheSame(LOSSLESS, 100, pitch, 0.002, 5e-9).outcome();
        assertEquals(hertz, outcome.spikeHertz(), 1e-7 * hertz);
        assertEquals(hertz, outcome.foundHertz(), 0.01 * hertz);
    }

    /** tanh(κl), κ = πa/(2d): coupled modes (Yariv; from memory), for a swing that is even over each period. */
    @ParameterizedTest
    @CsvSource({"100, 0.001", "100, 0.005", "300, 0.005"})
    void withoutLossTheSpikeIsAsHighAsCoupledModesSay(double metres, double amplitude) {
        EveryMetreTheSame.Outcome outcome = new EveryMetreTheSame(LOSSLESS, metres, 1, amplitude, 5e-9).outcome();
        assertEquals(Math.tanh(Math.PI * amplitude / 2 * metres), outcome.losslessReflection(), 1e-12);
        // The compiler takes a period in eight steps, which lets sin(π/8)/(π/8) = 0.974 of the swing through.
        assertEquals(outcome.losslessReflection(), outcome.spikeReflection(), 0.03);
    }

    @Test
    void onRealCableTheTraceStaysInItsNoiseWhileTheSweepShowsTheSpike() {
        CableType drop = Catalogue.standard().type("drop-6-foam");
        EveryMetreTheSame demonstration = new EveryMetreTheSame(drop, 100, 1, 0.001, 25e-9);
        EveryMetreTheSame.Outcome outcome = demonstration.outcome();
        assertTrue(outcome.swingVolts() < 3 * outcome.noiseVolts(), outcome.swingVolts() + " V");
        double even = outcome.evenReturnLoss().at(outcome.foundHertz());
        double uneven = outcome.returnLoss().at(outcome.foundHertz());
        assertTrue(even - uneven > 10, even + " dB, " + uneven + " dB");
        assertTrue(outcome.spikeReflection() <= 1.05 * demonstration.longestReflection());
    }
}

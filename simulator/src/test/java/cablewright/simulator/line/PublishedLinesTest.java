// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.PrimaryConstants;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole lines, from first principles, against published figures of their kind. */
class PublishedLinesTest {

    private static Complex impedance(CrossSection section, double frequency) {
        PrimaryConstants at = section.primaryConstants(new double[1], new double[] {2 * Math.PI * frequency});
        return new Complex(at.zRe()[0], at.zIm()[0])
                .divide(new Complex(at.yRe()[0], at.yIm()[0]))
                .sqrt();
    }

    /**
     * Loop models of telephone pairs, second-hand, of T. Starr, J. Cioffi, P. Silverman, Understanding DSL Technology: dB/km
     * and impedance. They stand for cable 4 to 7 % above the resistance of 20 degrees Celsius and have 49 or 50 nF/km; so at voice
     * frequency, where loss goes as sqrt(R C) and impedance as sqrt(R/C), both agree within 4 or 5 %.
     */
    @ParameterizedTest
    @CsvSource({
        "pair-26, 1e3, 1.8258341, 692.6722, -670.5855, 0.055",
        "pair-26, 1e4, 5.3854223, 232.9633, -199.3332, 0.055",
        "pair-26, 1e5, 10.771298, 122.1762, -39.73931, 0.06",
        "pair-24, 1e3, 1.4224171, 532.9789, -521.2646, 0.04",
        "pair-24, 1e4, 4.0782158, 186.1598, -149.4489, 0.04",
        "pair-24, 1e5, 7.5133624, 112.9887, -27.52734, 0.06"
    })
    void telephonePairsFollowTheLoopModelsAtVoiceFrequencyAndBeyond(
            String id, double frequency, double decibel, double re, double im, double tolerance) {
        CrossSection section = Catalogue.standard().type(id).section();
        assertEquals(decibel, 1000 * section.attenuationDecibelPerMetreAt(frequency), tolerance * decibel);
        Complex expected = new Complex(re, im);
        double apart = impedance(section, frequency).subtract(expected).abs() / expected.abs();
        assertEquals(0, apart, tolerance);
    }

    /**
     * Coax pairs of the trunk network, dB/km: 2.6/9.5 mm {@code 0.014 + 0.0038 f + 2.36 sqrt f}, 1.2/4.4 mm {@code 0.068 +
     * 0.0039 f + 5.2 sqrt f}, f in MHz (M. Wellhausen, from memory). Copper core and 0.25 or 0.15 mm copper tape, air spaced
     * to the nominal 75 ohm.
     */
    @ParameterizedTest
    @CsvSource({
        "2.6e-3, 9.5e-3, 0.25e-3, 1e6, 2.3778",
        "2.6e-3, 9.5e-3, 0.25e-3, 1e7, 7.51498",
        "2.6e-3, 9.5e-3, 0.25e-3, 6e7, 18.52248",
        "1.2e-3, 4.4e-3, 0.15e-3, 1e6, 5.2719",
        "1.2e-3, 4.4e-3, 0.15e-3, 1e7, 16.55084",
        "1.2e-3, 4.4e-3, 0.15e-3, 6e7, 40.58103"
    })
    void trunkCoaxPairsLoseWhatTheRecommendationSays(
            double core, double outer, double tape, double frequency, double decibel) {
        double root = 59.9584915921 * Math.log(outer / core) / 75;
        CoaxSection pair = CoaxSection.solid(
                core, outer, Conductor.COPPER, tape, Conductor.COPPER, new ConstantLossTangent(root * root, 5e-5, 1e8));
        assertEquals(decibel, 1000 * pair.attenuationDecibelPerMetreAt(frequency), 0.025 * decibel);
    }

    /** A pair of 168 ohm/km and 50 nF/km loses 1.7 dB/km at 1.6 kHz (a national network's figure, seen second-hand). */
    @ParameterizedTest
    @CsvSource({"pair-24, 1600, 1.7"})
    void exchangePairLosesWhatTheNetworkCounts(String id, double frequency, double decibel) {
        CrossSection section = Catalogue.standard().type(id).section();
        assertEquals(decibel, 1000 * section.attenuationDecibelPerMetreAt(frequency), 0.07 * decibel);
    }
}

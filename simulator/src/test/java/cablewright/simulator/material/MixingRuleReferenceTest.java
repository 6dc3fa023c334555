// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mixing formulas of A. Sihvola, Electromagnetic Mixing Formulas (1999, from memory); host 1.384083045, water 80.10304. */
class MixingRuleReferenceTest {

    private static double[] mix(MixingRule rule, double f, double[] s, double[] host, double[] water) {
        double[] re = {host[0]};
        double[] im = {host[1]};
        rule.mix(f, new double[] {s[0]}, new double[] {s[1]}, re, im, new double[] {water[0]}, new double[] {water[1]});
        return new double[] {re[0], im[0]};
    }

    @ParameterizedTest
    @CsvSource({
        "0.01, 1.3978197, 1.4239033, 1.4246411, 1.5066212, 1.5730332, 2.1712726",
        "0.05, 1.4556058, 1.5911266, 1.6125918, 2.0690041, 2.4496900, 5.3200309",
        "0.10, 1.5349232, 1.8199013, 1.9257909, 2.9491955, 3.8174382, 9.2559787",
        "0.20, 1.7226624, 2.3579347, 3.0605987, 5.3933510, 7.4593579, 17.127874",
        "0.30, 1.9627271, 3.0389199, 5.9981099, 8.9124738, 12.309842, 24.999770"
    })
    void rulesGiveTheirPublishedForms(
            double f, double series, double garnett, double bruggeman, double looyenga, double crim, double parallel) {
        double[] expected = {garnett, bruggeman, looyenga, crim, series, parallel};
        for (MixingRule rule : MixingRule.values()) {
            double[] mixed =
                    mix(rule, f, new double[] {0, 1e8}, new double[] {1.384083045, 0}, new double[] {80.10304, 0});
            double value = expected[rule.ordinal()];
            assertEquals(value, mixed[0], 6e-8 * value, rule::name);
            assertEquals(0, mixed[1], 1e-12, rule::name);
        }
    }

    /** For any passive parts, at any s, a mixture lies in the wedge between the real axis and the direction of 1/s. */
    @Test
    void mixturesStayPassiveOnEveryBranchFromConductionToRelaxation() {
        DebyeDielectric sea = Water.salt(20, 35).dielectric();
        ConstantLossTangent foam = new ConstantLossTangent(1.384, 1e-3, 1e8);
        for (MixingRule rule : MixingRule.values()) {
            for (double f : new double[] {0.02, 0.2, 1.0 / 3, 0.4, 0.66, 0.9}) {
                for (double frequency = 1; frequency < 1e11; frequency *= 1.7) {
                    for (double damping : new double[] {0, 0.3, 3}) {
                        double[] s = {damping * frequency, 2 * Math.PI * frequency};
                        double[] eps = mix(rule, f, s, at(foam, s), at(sea, s));
                        double storedLoss = s[0] * eps[0] - s[1] * eps[1];
                        assertTrue(eps[1] <= 0 && storedLoss >= 0, rule + " " + f + " " + frequency);
                    }
                }
            }
        }
    }

    private static double[] at(Dielectric dielectric, double[] s) {
        double[] re = new double[1];
        double[] im = new double[1];
        dielectric.relativePermittivity(new double[] {s[0]}, new double[] {s[1]}, re, im);
        return new double[] {re[0], im[0]};
    }

    @Test
    void everyMixtureLiesWithinTheTwoBounds() {
        for (double f = 0.05; f < 1; f += 0.05) {
            double low = f / 80 + (1 - f) / 1.4;
            double high = f * 80 + (1 - f) * 1.4;
            for (MixingRule rule : MixingRule.values()) {
                double eps = mix(rule, f, new double[] {0, 1}, new double[] {1.4, 0}, new double[] {80, 0})[0];
                assertTrue(eps >= 1 / low - 1e-9 && eps <= high + 1e-9, rule + " " + f);
            }
        }
    }

    @Test
    void moreThanAllWaterIsRefused() {
        IllegalArgumentException e = assertThrows(
                IllegalArgumentException.class,
                () -> mix(MixingRule.CRIM, 1.2, new double[] {0, 1}, new double[] {1, 0}, new double[] {80, 0}));
        assertEquals("fraction is 1.2; allowed is 0 to 1", e.getMessage());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.simulator.wave.GaussianPulse;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NoiseLevelTest {

    @Test
    void whiteNoiseIsToldUnderEchoes() {
        SplittableRandom random = new SplittableRandom(4);
        GaussianPulse pulse = new GaussianPulse(20e-9);
        double[] values = new double[4000];
        for (int i = 0; i < values.length; i++) {
            values[i] = pulse.at(i * 1e-9) + 0.5 * pulse.at(i * 1e-9 - 1e-6) + 0.003 * random.nextGaussian();
        }
        assertEquals(0.003, NoiseLevel.volts(values), 0.0002);
        assertEquals(0, NoiseLevel.volts(new double[] {1, 2}));
        assertEquals(0, NoiseLevel.volts(new double[] {1, 2, 3, 4}), 1e-12);
    }
}

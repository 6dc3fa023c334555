// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import cablewright.simulator.wave.Waveform;

/**
 * Impedances along a lossless line from its answer to a step, layer by layer: the first reflection that is left is the
 * step to the next layer; both waves are carried over it and on (Bruckstein and Kailath, Inverse Scattering for Discrete
 * Transmission-Line Models, SIAM Review 29(3), 359–389 (1987), from memory).
 */
final class LayerPeeling {

    private LayerPeeling() {}

    static double[] impedances(Waveform answer, double ohms, int layers) {
        double[] back = new double[layers];
        double[] forth = new double[layers];
        forth[0] = 1;
        for (int i = 0; i < layers; i++) {
            back[i] = answer.sample(i) - (i == 0 ? 0 : answer.sample(i - 1));
        }
        double[] impedances = new double[layers];
        double z = ohms;
        for (int m = 0; m < layers; m++) {
            double r = back[m] / forth[0];
            z *= (1 + r) / (1 - r);
            impedances[m] = z;
            double through = Math.sqrt(1 - r * r);
            for (int i = 0; i < layers - m; i++) {
                double d = forth[i];
                double u = back[m + i];
                forth[i] = (d - r * u) / through;
                back[m + i] = (u - r * d) / through;
            }
        }
        return impedances;
    }
}

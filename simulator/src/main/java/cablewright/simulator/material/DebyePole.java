// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

/**
 * One relaxation: {@code strength / (1 + s tau)}.
 *
 * @param strength step of relative permittivity, 0 or more
 * @param relaxationSeconds tau, above 0
 */
public record DebyePole(double strength, double relaxationSeconds) {

    public DebyePole {
        Limits.notNegative("strength", strength);
        Limits.positive("relaxationSeconds", relaxationSeconds);
    }
}

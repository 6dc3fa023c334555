// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.material.Limits;

/**
 * One relaxation of a line's capacitance: {@code s dC/(1 + s tau)}.
 *
 * @param capacitanceFaradsPerMetre dC, 0 or more
 * @param relaxationSeconds tau, 0 or more
 */
public record DebyeTerm(double capacitanceFaradsPerMetre, double relaxationSeconds) {

    // Rejects a term that can't exist.
    public DebyeTerm {
        Limits.notNegative("capacitanceFaradsPerMetre", capacitanceFaradsPerMetre);
        Limits.notNegative("relaxationSeconds", relaxationSeconds);
    }
}

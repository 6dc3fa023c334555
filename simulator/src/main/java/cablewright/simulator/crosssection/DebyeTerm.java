// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * One relaxation of a line's capacitance: {@code s dC/(1 + s tau)}.
 *
 * @param capacitanceFaradsPerMetre dC, 0 or more
 * @param relaxationSeconds tau, 0 or more
 */
public record DebyeTerm(
        @Between(least = 0) double capacitanceFaradsPerMetre, @Between(least = 0) double relaxationSeconds) {

    // Checks the ranges.
    public DebyeTerm {
        Require.components(DebyeTerm.class, capacitanceFaradsPerMetre, relaxationSeconds);
    }
}

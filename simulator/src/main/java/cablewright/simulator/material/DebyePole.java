// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * One relaxation: {@code strength / (1 + s tau)}.
 *
 * @param strength step of relative permittivity, 0 or more
 * @param relaxationSeconds tau, above 0
 */
public record DebyePole(@Between(least = 0) double strength, @Above(floor = 0) double relaxationSeconds) {

    public DebyePole {
        Require.components(DebyePole.class, strength, relaxationSeconds);
    }
}

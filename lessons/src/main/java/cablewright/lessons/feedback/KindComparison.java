// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.lookalike.LookAlike;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.visibility.VisibilityRules;

/**
 * What the kind that was flagged could have shown in place of what is there.
 *
 * @param nearest the event of that kind that comes nearest, with size, length and place free
 * @param echo what it does to the trace at its first place
 * @param noiseVolts noise after averaging, root mean square [V]
 */
public record KindComparison(LookAlike nearest, EventEcho echo, double noiseVolts) {

    /**
     * Returns whether the two traces differ enough to be distinguished at the settings.
     *
     * @return whether the difference is at least three times the noise
     */
    public boolean canBeTold() {
        return nearest.leftVolts() >= VisibilityRules.MARGINAL_OVER_NOISE * noiseVolts;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.course;

import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;

/**
 * A way in which trainees go wrong.
 *
 * @param claim what they say
 * @param temptation why it looks right
 * @param remedy what to ask or to show
 */
public record Misreading(@Text String claim, @Lines String temptation, @Lines String remedy) {

    /** Checks the ranges. */
    public Misreading {
        Require.components(Misreading.class, claim, temptation, remedy);
    }
}

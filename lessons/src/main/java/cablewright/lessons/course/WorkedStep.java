// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.course;

import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;

/**
 * One step of a worked example.
 *
 * @param question what is to be done or decided in this step
 * @param answer how it is done, in Markdown; shown on request
 */
public record WorkedStep(@Text String question, @Lines String answer) {

    /** Checks the ranges. */
    public WorkedStep {
        Require.components(WorkedStep.class, question, answer);
    }
}

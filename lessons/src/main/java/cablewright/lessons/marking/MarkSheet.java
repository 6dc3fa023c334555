// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.exercise.Attempt;
import java.util.List;

/**
 * A marked attempt.
 *
 * @param exerciseId the exercise
 * @param attempt what was handed in
 * @param marks marks after costs, 0 to {@code maximum}
 * @param maximum most that can be earned
 * @param hintCostMarks what hints cost
 * @param needlessDigs how many flags would open the ground for nothing
 * @param damageLeft how many pieces of damage were called something that belongs
 * @param damageMissed how many pieces of damage that could be seen were not flagged at all
 * @param findings the findings: along the line, then what could not be seen, then the question's answer
 */
public record MarkSheet(
        String exerciseId,
        Attempt attempt,
        double marks,
        double maximum,
        double hintCostMarks,
        int needlessDigs,
        int damageLeft,
        int damageMissed,
        List<Finding> findings) {

    /** Copies the list. */
    public MarkSheet {
        findings = List.copyOf(findings);
    }

    /**
     * Returns the share of the marks that was earned.
     *
     * @return 0 to 1; where there is nothing to earn, 1 where no flag cost anything and 0 else
     */
    public double fraction() {
        if (maximum > 0) {
            return marks / maximum;
        }
        return costs(findings) ? 0 : 1;
    }

    private static boolean costs(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.marks() < 0 || costs(finding.children()));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

/** What a trainee says of a flagged place. */
public enum Verdict {
    /** It is in the as-built record, or it is normal hardware: leave it alone. */
    BELONGS,
    /** It is damage: somebody has to go there. */
    DAMAGE
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

/** Whether an event can be asked for. */
public enum Requirement {
    /** Some permitted setting shows it clearly: missing it loses its marks. */
    DEMANDED,
    /** A careful reader may find it: it earns marks when found and costs nothing when missed. */
    MARGINAL,
    /** No permitted setting shows it: it is shown after commit, with the reason. */
    HIDDEN
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

/** Whether an event can be seen on a trace. */
public enum Visibility {
    /** Nothing stands in the way. */
    CLEAR,
    /** A careful reader may find it; nobody can demand it. */
    MARGINAL,
    /** The trace does not show it. */
    HIDDEN
}

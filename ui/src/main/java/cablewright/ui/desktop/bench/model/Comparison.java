// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

/** Which other trace is laid over that of the cable as it is. */
public enum Comparison {
    /** None. */
    NONE,
    /** The trace before the last step. */
    BEFORE,
    /** The trace of the cable as it was saved or opened. */
    SAVED;

    /**
     * Returns what follows as somebody steps through.
     *
     * @return the next one; after the last the first
     */
    public Comparison next() {
        return values()[(ordinal() + 1) % values().length];
    }
}

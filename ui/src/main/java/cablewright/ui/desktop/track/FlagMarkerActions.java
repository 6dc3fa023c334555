// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import java.util.Optional;

/** What a person can do to flags with the pointer on the trace track. */
public interface FlagMarkerActions {

    /**
     * Selects a flag.
     *
     * @param letter its letter
     */
    void select(String letter);

    /**
     * Moves one staff of a flag while the pointer drags it.
     *
     * @param letter its letter
     * @param secondStaff whether the staff at the end of its stretch is meant
     * @param metres where to, at the set velocity [m]
     */
    void drag(String letter, boolean secondStaff, double metres);

    /** Ends a drag: what was moved becomes one step that can be undone. */
    void drop();

    /**
     * Places a new flag.
     *
     * @param metres where, at the set velocity [m]
     */
    void place(double metres);

    /**
     * Places a new flag whose second staff the pointer then drags.
     *
     * @param metres where, at the set velocity [m]
     * @return its letter; empty where none can be placed
     */
    default Optional<String> begin(double metres) {
        return Optional.empty();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

/** What a person can do with the pointer to things on a track: events of the cable, items of the record. */
public interface MarkActions {

    /**
     * Selects a thing.
     *
     * @param id its name
     * @param beside whether what is selected already stays selected
     */
    void select(String id, boolean beside);

    /**
     * Moves a thing while the pointer drags it.
     *
     * @param id its name
     * @param shownMetres where it is to begin, as the axis shows it [m]
     */
    void drag(String id, double shownMetres);

    /** Ends a drag: what was moved becomes one step that can be undone. */
    void drop();

    /**
     * Places something new.
     *
     * @param shownMetres where, as the axis shows it [m]
     */
    void place(double shownMetres);
}

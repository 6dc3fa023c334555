// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.cable.EventKind;

/**
 * One thing that the drawings say is in the line. Where it stands for an event of the cable, both have the same id: that is
 * how marking knows that the event is in the record.
 *
 * @param id name within the record; the event's own name where it stands for one
 * @param positionMetres where the drawing puts it, from the near end [m]
 * @param kind what the drawing says it is
 * @param label the drawing's words, such as "splice S2, pole 14"
 */
public record RecordedItem(String id, double positionMetres, EventKind kind, String label) {

    /** Refuses values that can't be. */
    public RecordedItem {
        Require.id("id", id);
        Require.between("positionMetres", positionMetres, 0, 200_000);
        Require.present("kind", kind);
        Require.line("label", label);
    }
}

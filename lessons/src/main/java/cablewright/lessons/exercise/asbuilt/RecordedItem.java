// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.asbuilt;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;

/**
 * One thing that the drawings say is in the line. Where it stands for an event of the cable, both have the same id: that is
 * how marking knows that the event is in the record.
 *
 * @param id name within the record; the event's own name where it stands for one
 * @param positionMetres where the drawing puts it, from the near end [m]
 * @param kind what the drawing says it is
 * @param label the drawing's words, such as "splice S2, pole 14"
 */
public record RecordedItem(
        @Id String id, @Between(least = 0, most = 200_000) double positionMetres, EventKind kind, @Text String label) {

    /** Checks the ranges. */
    public RecordedItem {
        Require.components(RecordedItem.class, id, positionMetres, kind, label);
    }
}

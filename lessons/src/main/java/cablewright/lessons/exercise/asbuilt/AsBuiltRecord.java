// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.asbuilt;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The drawings: what is meant to be there. Never mixed with what is there.
 *
 * @param lengthMetres length that the drawings give, above 0 to 200000 [m]; absent where they give none
 * @param items what they show along the line, in order of distance; at most 500
 * @param farEnd what they say that it ends in
 * @param note remarks on them, one line, such as who drew them and when
 * @param mayLie whether the brief warns that they may be wrong; where they may, hardware that they lack still belongs
 */
public record AsBuiltRecord(
        @Above(floor = 0, most = 200_000) OptionalDouble lengthMetres,
        @Entries(most = 500) List<RecordedItem> items,
        RecordedEnd farEnd,
        @Text String note,
        boolean mayLie) {

    /** Copies the list and checks the ranges. */
    public AsBuiltRecord {
        Require.components(AsBuiltRecord.class, lengthMetres, items, farEnd, note, mayLie);
        items = List.copyOf(items);
        Require.distinct("items", items, RecordedItem::id);
        for (int i = 1; i < items.size(); i++) {
            if (items.get(i).positionMetres() < items.get(i - 1).positionMetres()) {
                throw new IllegalArgumentException("items has \"" + items.get(i).id() + "\" after \""
                        + items.get(i - 1).id() + "\"; list them by rising positionMetres");
            }
        }
    }

    /**
     * Returns whether the drawings show an event.
     *
     * @param eventId the event's name
     * @return whether an item has that id
     */
    public boolean shows(String eventId) {
        return items.stream().anyMatch(item -> item.id().equals(eventId));
    }
}

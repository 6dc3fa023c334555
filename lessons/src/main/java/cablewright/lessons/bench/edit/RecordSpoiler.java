// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.line.CableType;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Spoils a record in one of the ways in which drawings are wrong, and marks it as one that may lie. By how much is common
 * practice, no source. The same seed spoils it the same way.
 */
public enum RecordSpoiler {
    /** One item is drawn 2 to 5 % of the length, and at least 1 m, from where it lies. */
    WRONG_DISTANCE,
    /** One item is left out. */
    LEFT_OUT,
    /** Something is drawn that was planned and never built. */
    NEVER_BUILT;

    /**
     * Returns whether a record can be spoilt so.
     *
     * @param record the record
     * @return false where it would take an item and has none
     */
    public boolean canSpoil(AsBuiltRecord record) {
        return this == NEVER_BUILT || !record.items().isEmpty();
    }

    /**
     * Spoils a record.
     *
     * @param record the record
     * @param cable the cable for which it stands
     * @param seed decides which item, and how far
     * @param texts the language of what is written on it
     * @return the spoilt record
     * @throws IllegalArgumentException if it has no item to spoil
     */
    public AsBuiltRecord spoil(AsBuiltRecord record, Cable cable, long seed, BenchTexts texts) {
        if (!canSpoil(record)) {
            throw new IllegalArgumentException("items is empty; draw something before it is spoilt");
        }
        AsBuiltRecord spoilt = spoilt(record, cable, new SplittableRandom(seed), texts);
        return RecordEdits.withNote(RecordEdits.withWarning(spoilt, true), texts.say("record.note.unsure"));
    }

    private AsBuiltRecord spoilt(AsBuiltRecord record, Cable cable, SplittableRandom dice, BenchTexts texts) {
        double length = cable.lengthMetres();
        if (this == NEVER_BUILT) {
            double metres = Math.rint((0.2 + 0.6 * dice.nextDouble()) * length * 2) / 2;
            return RecordEdits.planned(
                    record, cable, hardware(cable.runs().get(0).type()), metres, texts);
        }
        RecordedItem item = record.items().get(dice.nextInt(record.items().size()));
        if (this == LEFT_OUT) {
            return RecordEdits.without(record, item.id());
        }
        double off = Math.max(1, (0.02 + 0.03 * dice.nextDouble()) * length);
        boolean nearer = item.positionMetres() + off > length || (item.positionMetres() > off && dice.nextBoolean());
        double metres = item.positionMetres() + (nearer ? -off : off);
        return RecordEdits.moved(record, item.id(), Math.rint(metres * 10) / 10);
    }

    private static EventKind hardware(CableType type) {
        List<Insertable> offered = Insertable.on(type);
        return offered.contains(Insertable.TAP) ? EventKind.TAP : EventKind.SPLICE;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.cable.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Edits of an as-built record: made from the cable as accurate drawings would show it, then spoilt as drawings are: a wrong
 * distance, a splice that nobody drew, a tap that was planned and never built.
 */
public final class RecordEdits {

    private RecordEdits() {}

    /**
     * Makes the record that accurate drawings would be: all hardware at its place to a tenth of a metre, changes of cable,
     * length and end, and nothing of damage.
     *
     * @param cable the cable
     * @param texts the language of its labels
     * @return the record
     */
    public static AsBuiltRecord of(Cable cable, BenchTexts texts) {
        List<RecordedItem> items = new ArrayList<>();
        for (Event event : cable.events()) {
            if (event.kind().nature() == Nature.HARDWARE) {
                items.add(new RecordedItem(
                        event.id(), tenths(event.startMetres()), event.kind(), label(event.kind(), event.id(), texts)));
            }
        }
        double metres = 0;
        for (int i = 0; i + 1 < cable.runs().size(); i++) {
            metres += cable.runs().get(i).lengthMetres();
            Run next = cable.runs().get(i + 1);
            List<String> taken = items.stream().map(RecordedItem::id).toList();
            items.add(new RecordedItem(
                    FreshNames.numbered("change", taken),
                    tenths(metres),
                    EventKind.CABLE_CHANGE,
                    line(texts.say("record.cableChange", next.type().title()))));
        }
        return new AsBuiltRecord(
                OptionalDouble.of(tenths(cable.lengthMetres())),
                ordered(items),
                end(cable.farEnd(), texts),
                texts.say("record.note"),
                false);
    }

    private static double tenths(double metres) {
        return Math.rint(metres * 10) / 10;
    }

    private static String line(String text) {
        return text.length() <= 200 ? text : text.substring(0, 200);
    }

    private static String label(EventKind kind, String id, BenchTexts texts) {
        String number =
                id.startsWith(kind.id()) ? id.substring(kind.id().length()).replaceFirst("^-", "") : id;
        return texts.say("record.item", texts.kind(kind), number);
    }

    private static List<RecordedItem> ordered(List<RecordedItem> items) {
        return items.stream()
                .sorted(Comparator.comparingDouble(RecordedItem::positionMetres))
                .toList();
    }

    private static RecordedEnd end(FarEnd end, BenchTexts texts) {
        if (end instanceof FarEnd.Open) {
            return new RecordedEnd(RecordedEnd.Kind.OPEN, texts.say("record.end.open"));
        }
        if (end instanceof FarEnd.Short) {
            return new RecordedEnd(RecordedEnd.Kind.SHORT, texts.say("record.end.short"));
        }
        return end instanceof FarEnd.Terminated
                ? new RecordedEnd(RecordedEnd.Kind.TERMINATED, texts.say("record.end.terminated"))
                : new RecordedEnd(RecordedEnd.Kind.NOT_SAID, texts.say("record.end.not-said"));
    }

    private static AsBuiltRecord with(AsBuiltRecord record, List<RecordedItem> items) {
        return Copies.with(record, "items", ordered(items));
    }

    /**
     * Changes an item of the record.
     *
     * @param record the record
     * @param id the item's name
     * @param item the item in its place
     * @return the record, its items in order of distance
     */
    public static AsBuiltRecord changed(AsBuiltRecord record, String id, RecordedItem item) {
        return with(
                record,
                record.items().stream()
                        .map(before -> before.id().equals(id) ? item : before)
                        .toList());
    }

    /**
     * Puts an item at another distance; where it stands for an event the drawing is then wrong.
     *
     * @param record the record
     * @param id the item's name
     * @param metres the distance that it is to claim [m]; not below 0
     * @return the record
     */
    public static AsBuiltRecord moved(AsBuiltRecord record, String id, double metres) {
        RecordedItem item = find(record, id);
        double there = Math.max(0, metres);
        return changed(record, id, new RecordedItem(id, there, item.kind(), item.label()));
    }

    /**
     * Leaves an item out of the drawings: a splice that nobody recorded.
     *
     * @param record the record
     * @param id the item's name
     * @return the record
     */
    public static AsBuiltRecord without(AsBuiltRecord record, String id) {
        find(record, id);
        return with(
                record,
                record.items().stream().filter(item -> !item.id().equals(id)).toList());
    }

    /**
     * Draws a thing that does not lie there: planned, and never built.
     *
     * @param record the record
     * @param cable the cable, whose names it must not have
     * @param kind what was planned
     * @param metres where [m]
     * @param texts the language of its label
     * @return the record
     */
    public static AsBuiltRecord planned(
            AsBuiltRecord record, Cable cable, EventKind kind, double metres, BenchTexts texts) {
        List<String> taken =
                new ArrayList<>(record.items().stream().map(RecordedItem::id).toList());
        cable.events().forEach(event -> taken.add(event.id()));
        String id = FreshNames.numbered("planned-" + kind.id(), taken);
        List<RecordedItem> items = new ArrayList<>(record.items());
        items.add(new RecordedItem(id, Math.max(0, metres), kind, texts.say("record.planned", texts.kind(kind))));
        return with(record, items);
    }

    /**
     * Draws an event of the cable that the record lacks.
     *
     * @param record the record
     * @param cable the cable
     * @param eventId the event's name
     * @param texts the language of its label
     * @return the record
     */
    public static AsBuiltRecord drawn(AsBuiltRecord record, Cable cable, String eventId, BenchTexts texts) {
        Event event = CableEdits.find(cable, eventId);
        List<RecordedItem> items = new ArrayList<>(record.items());
        items.add(new RecordedItem(
                eventId, tenths(event.startMetres()), event.kind(), label(event.kind(), eventId, texts)));
        return with(record, items);
    }

    /** Renames an item and what refers to it. */
    public static AsBuiltRecord renamed(AsBuiltRecord record, String id, String name) {
        return with(
                record,
                record.items().stream()
                        .map(item -> item.id().equals(id) ? Copies.with(item, "id", name) : item)
                        .toList());
    }

    private static RecordedItem find(AsBuiltRecord record, String id) {
        return record.items().stream()
                .filter(item -> item.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the record has no item \"" + id + "\"; it has "
                        + record.items().stream().map(RecordedItem::id).toList()));
    }

    /**
     * Changes the length that the drawings give.
     *
     * @param record the record
     * @param metres length [m]; empty where they give none
     * @return the record
     */
    public static AsBuiltRecord withLength(AsBuiltRecord record, OptionalDouble metres) {
        return Copies.with(record, "lengthMetres", metres);
    }

    /**
     * Changes what the drawings say of the end.
     *
     * @param record the record
     * @param end the end
     * @return the record
     */
    public static AsBuiltRecord withEnd(AsBuiltRecord record, RecordedEnd end) {
        return Copies.with(record, "farEnd", end);
    }

    /**
     * Changes the remark.
     *
     * @param record the record
     * @param note one line
     * @return the record
     */
    public static AsBuiltRecord withNote(AsBuiltRecord record, String note) {
        return Copies.with(record, "note", note);
    }

    /**
     * Says whether the brief warns that the drawings may be wrong.
     *
     * @param record the record
     * @param mayLie whether it does
     * @return the record
     */
    public static AsBuiltRecord withWarning(AsBuiltRecord record, boolean mayLie) {
        return Copies.with(record, "mayLie", mayLie);
    }
}

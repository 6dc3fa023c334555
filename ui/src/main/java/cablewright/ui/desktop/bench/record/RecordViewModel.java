// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.record;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.edit.RecordComparison;
import cablewright.lessons.bench.edit.RecordDifference;
import cablewright.lessons.bench.edit.RecordEdits;
import cablewright.lessons.bench.edit.RecordSpoiler;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The as-built record of the exercise on the Bench: what is done to it, and in what it differs from the cable. */
public final class RecordViewModel {

    private static final double MIDDLE = 0.5;

    private final DocumentViewModel document;
    private final Texts texts;
    private final LongSupplier chance;
    private final ReadOnlyObjectWrapper<List<RecordDifference>> differences = new ReadOnlyObjectWrapper<>(List.of());

    /**
     * Edits the record of a document.
     *
     * @param document the document
     * @param texts the sentences of the editors
     * @param chance decides which item is spoilt, and how far
     */
    public RecordViewModel(DocumentViewModel document, Texts texts, LongSupplier chance) {
        this.document = document;
        this.texts = texts;
        this.chance = chance;
        document.documentProperty().addListener((o, before, now) -> {
            if (!before.record().equals(now.record()) || !before.cable().equals(now.cable())) {
                compare(now);
            }
        });
        compare(document.now());
    }

    private void compare(BenchDocument now) {
        differences.set(RecordComparison.of(now.record(), now.cable()));
    }

    DocumentViewModel document() {
        return document;
    }

    public AsBuiltRecord record() {
        return document.now().record();
    }

    /**
     * In what the record differs from the cable.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<List<RecordDifference>> differencesProperty() {
        return differences.getReadOnlyProperty();
    }

    private Optional<String> step(String name, UnaryOperator<AsBuiltRecord> edit) {
        return document.step(name, now -> now.withRecord(edit));
    }

    private Optional<String> move(String name, String of, UnaryOperator<AsBuiltRecord> edit) {
        return document.move(name, "record/" + of, now -> now.withRecord(edit));
    }

    /** Makes the record that accurate drawings of the cable would be. */
    public void makeFromCable() {
        document.step(
                texts.say("record.step.make"),
                now -> now.withRecord(before -> RecordEdits.of(now.cable(), now.texts())));
    }

    /**
     * Returns whether the record can be spoilt in some way.
     *
     * @param way the way
     * @return whether there is anything to spoil
     */
    public boolean canSpoil(RecordSpoiler way) {
        return way.canSpoil(record());
    }

    /**
     * Spoils the record as drawings are.
     *
     * @param way the way
     */
    public void spoil(RecordSpoiler way) {
        long seed = chance.getAsLong();
        document.step(
                texts.say("record.step.spoil"),
                now -> now.withRecord(before -> way.spoil(before, now.cable(), seed, now.texts())));
    }

    /**
     * Draws a thing that is not there, half-way along.
     *
     * @param kind what it is
     * @return its name in the record
     */
    public Optional<String> add(EventKind kind) {
        List<String> before = record().items().stream().map(RecordedItem::id).toList();
        document.step(
                texts.say("record.step.add"),
                now -> now.withRecord(record -> RecordEdits.planned(
                        record, now.cable(), kind, MIDDLE * now.cable().lengthMetres(), now.texts())));
        return record().items().stream()
                .map(RecordedItem::id)
                .filter(id -> !before.contains(id))
                .findFirst();
    }

    /**
     * Draws hardware of the cable that the record lacks.
     *
     * @param eventId the event's name
     */
    public void draw(String eventId) {
        document.step(
                texts.say("record.step.draw"),
                now -> now.withRecord(record -> RecordEdits.drawn(record, now.cable(), eventId, now.texts())));
    }

    /**
     * Leaves an item out.
     *
     * @param id the item's name
     */
    public void remove(String id) {
        step(texts.say("record.step.remove"), record -> RecordEdits.without(record, id));
    }

    /**
     * Puts an item elsewhere.
     *
     * @param id the item's name
     * @param metres where [m]
     * @return what is wrong, if it can't be done
     */
    public Optional<String> place(String id, double metres) {
        return move(texts.say("record.step.move"), "place/" + id, record -> RecordEdits.moved(record, id, metres));
    }

    /**
     * Calls an item something else.
     *
     * @param id the item's name
     * @param kind what it is called
     * @return what is wrong, if it can't be done
     */
    public Optional<String> kind(String id, EventKind kind) {
        return step(texts.say("record.step.kind"), record -> changed(record, id, it -> of(it, kind, it.label())));
    }

    /**
     * Changes the drawing's words for an item.
     *
     * @param id the item's name
     * @param label the words
     * @return what is wrong, if it can't be done
     */
    public Optional<String> label(String id, String label) {
        return move(
                texts.say("record.step.label"),
                "label/" + id,
                record -> changed(record, id, it -> of(it, it.kind(), label)));
    }

    private static RecordedItem of(RecordedItem item, EventKind kind, String label) {
        return new RecordedItem(item.id(), item.positionMetres(), kind, label);
    }

    private static AsBuiltRecord changed(AsBuiltRecord record, String id, UnaryOperator<RecordedItem> edit) {
        return record.items().stream()
                .filter(item -> item.id().equals(id))
                .findFirst()
                .map(item -> RecordEdits.changed(record, id, edit.apply(item)))
                .orElse(record);
    }

    /**
     * Changes the length that the drawings give.
     *
     * @param metres length [m]; empty where they give none
     * @return what is wrong, if it can't be done
     */
    public Optional<String> length(OptionalDouble metres) {
        return move(texts.say("record.step.length"), "length", record -> RecordEdits.withLength(record, metres));
    }

    /**
     * Changes what the drawings say that the line ends in.
     *
     * @param kind what it is
     * @return what is wrong, if it can't be done
     */
    public Optional<String> end(RecordedEnd.Kind kind) {
        return step(
                texts.say("record.step.end"),
                record -> RecordEdits.withEnd(
                        record, new RecordedEnd(kind, record.farEnd().label())));
    }

    /**
     * Changes the drawings' words for the end.
     *
     * @param label the words
     * @return what is wrong, if it can't be done
     */
    public Optional<String> endLabel(String label) {
        return move(
                texts.say("record.step.end"),
                "end",
                record -> RecordEdits.withEnd(
                        record, new RecordedEnd(record.farEnd().kind(), label)));
    }

    /**
     * Changes the remark.
     *
     * @param note one line
     * @return what is wrong, if it can't be done
     */
    public Optional<String> note(String note) {
        return move(texts.say("record.step.note"), "note", record -> RecordEdits.withNote(record, note));
    }

    /**
     * Says whether the brief warns that the drawings may be wrong.
     *
     * @param mayLie whether it does
     */
    public void warn(boolean mayLie) {
        step(texts.say("record.step.warn"), record -> RecordEdits.withWarning(record, mayLie));
    }
}

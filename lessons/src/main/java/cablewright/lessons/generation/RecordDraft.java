// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Draws the as-built record of a cable: its hardware where drawings have it, a little off. A record that may lie also
 * leaves a splice out or shows a tap that was never built, and says in its note that it may.
 */
final class RecordDraft {

    private static final double HARD = 0.5;

    private final SeededRandom dice;
    private final CablePlan plan;
    private final double difficulty;
    private final GenerationTexts texts;

    RecordDraft(SeededRandom dice, CablePlan plan, double difficulty, GenerationTexts texts) {
        this.texts = texts;
        this.dice = dice;
        this.plan = plan;
        this.difficulty = difficulty;
    }

    AsBuiltRecord draw() {
        double length = plan.cable().lengthMetres();
        boolean mayLie = !plan.family().hardware().isEmpty() && difficulty > HARD && dice.chance(0.4);
        List<RecordedItem> items = new ArrayList<>();
        boolean leftOut = false;
        for (Event event : plan.cable().events()) {
            if (event.kind().nature() == Nature.HARDWARE) {
                if (mayLie && !leftOut && event.kind() == EventKind.SPLICE) {
                    leftOut = true;
                } else {
                    items.add(new RecordedItem(
                            event.id(), place(event.startMetres(), length), event.kind(), label(event)));
                }
            }
        }
        if (mayLie && !leftOut) {
            EventKind kind = dice.of(plan.family().hardware());
            items.add(new RecordedItem(
                    "planned", place(dice.between(0.2, 0.8) * length, length), kind, texts.say("record.planned")));
        }
        items.sort(Comparator.comparingDouble(RecordedItem::positionMetres));
        return new AsBuiltRecord(OptionalDouble.of(length), items, end(), note(mayLie), mayLie);
    }

    private double place(double metres, double length) {
        double off = dice.normal() * difficulty * (0.15 + 0.001 * metres);
        return Math.max(0, Math.min(length, Math.rint((metres + off) * 2) / 2));
    }

    private String label(Event event) {
        return texts.say("record.item", texts.kind(event.kind()), event.id().substring(1));
    }

    private RecordedEnd end() {
        if (plan.endsTerminated()) {
            return new RecordedEnd(
                    RecordedEnd.Kind.TERMINATED,
                    texts.say("record.terminator", Math.round(plan.type().nominalImpedanceOhms())));
        }
        return new RecordedEnd(RecordedEnd.Kind.OPEN, texts.say("record.open"));
    }

    private String note(boolean mayLie) {
        if (plan.family().hardware().isEmpty()) {
            return texts.say("record.note.reel");
        }
        return texts.say(mayLie ? "record.note.unsure" : "record.note.usual");
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.bench.edit.RecordDifference.What;
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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Compares drawings with the cable. Drawings give tenths of a metre, so what is off by no more than half of one is right.
 * An item stands for the event of the same name; one that is drawn as a change of cable stands for the nearest change.
 */
public final class RecordComparison {

    /** Half of a tenth of a metre, and what the arithmetic of doubles may add. */
    private static final double AS_DRAWN_METRES = 0.05 + 1e-9;

    private final AsBuiltRecord record;
    private final Cable cable;
    private final List<RecordDifference> found = new ArrayList<>();

    private RecordComparison(AsBuiltRecord record, Cable cable) {
        this.record = record;
        this.cable = cable;
    }

    /**
     * Compares.
     *
     * @param record the drawings
     * @param cable what is there
     * @return in what they differ: items in the order of the record, then what it lacks, then length and end
     */
    public static List<RecordDifference> of(AsBuiltRecord record, Cable cable) {
        RecordComparison comparison = new RecordComparison(record, cable);
        comparison.items();
        comparison.lacking();
        comparison.length();
        comparison.end();
        return List.copyOf(comparison.found);
    }

    private void add(What what, String subject, OptionalDouble drawn, OptionalDouble there) {
        found.add(new RecordDifference(what, subject, drawn, there));
    }

    private void items() {
        List<Double> changes = changes();
        for (RecordedItem item : record.items()) {
            Optional<Event> event = cable.event(item.id());
            if (event.isPresent()) {
                event(item, event.get());
            } else if (item.kind() == EventKind.CABLE_CHANGE) {
                place(item, nearest(changes, item.positionMetres()));
            } else if (item.kind() == EventKind.END) {
                place(item, OptionalDouble.of(cable.lengthMetres()));
            } else {
                add(What.NEVER_BUILT, item.id(), drawn(item), OptionalDouble.empty());
            }
        }
        changes.forEach(metres -> add(What.NOT_DRAWN, "", OptionalDouble.empty(), OptionalDouble.of(metres)));
    }

    private List<Double> changes() {
        List<Double> changes = new ArrayList<>();
        double metres = 0;
        for (Run run : cable.runs().subList(0, cable.runs().size() - 1)) {
            metres += run.lengthMetres();
            changes.add(metres);
        }
        return changes;
    }

    /** Takes the change that lies nearest out of those that no item stands for yet. */
    private static OptionalDouble nearest(List<Double> changes, double metres) {
        Optional<Double> best =
                changes.stream().min((a, b) -> Double.compare(Math.abs(a - metres), Math.abs(b - metres)));
        best.ifPresent(changes::remove);
        return best.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble drawn(RecordedItem item) {
        return OptionalDouble.of(item.positionMetres());
    }

    private void event(RecordedItem item, Event event) {
        if (item.kind() != event.kind()) {
            add(What.KIND, item.id(), drawn(item), OptionalDouble.of(event.startMetres()));
        }
        place(item, OptionalDouble.of(event.startMetres()));
    }

    private void place(RecordedItem item, OptionalDouble there) {
        if (there.isEmpty()) {
            add(What.NEVER_BUILT, item.id(), drawn(item), there);
        } else if (Math.abs(there.getAsDouble() - item.positionMetres()) > AS_DRAWN_METRES) {
            add(What.PLACE, item.id(), drawn(item), there);
        }
    }

    private void lacking() {
        for (Event event : cable.events()) {
            if (event.kind().nature() == Nature.HARDWARE && !record.shows(event.id())) {
                add(What.NOT_DRAWN, event.id(), OptionalDouble.empty(), OptionalDouble.of(event.startMetres()));
            }
        }
    }

    private void length() {
        record.lengthMetres().ifPresent(drawn -> {
            if (Math.abs(drawn - cable.lengthMetres()) > AS_DRAWN_METRES) {
                add(What.LENGTH, "", record.lengthMetres(), OptionalDouble.of(cable.lengthMetres()));
            }
        });
    }

    /** Equipment may stand for any load, and drawings that say nothing can't be wrong. */
    private void end() {
        RecordedEnd.Kind drawn = record.farEnd().kind();
        FarEnd there = cable.farEnd();
        boolean right =
                switch (drawn) {
                    case OPEN -> there instanceof FarEnd.Open;
                    case SHORT -> there instanceof FarEnd.Short;
                    case TERMINATED, EQUIPMENT -> there instanceof FarEnd.Terminated;
                    case NOT_SAID -> true;
                };
        if (!right) {
            add(What.END, "", OptionalDouble.empty(), OptionalDouble.of(cable.lengthMetres()));
        }
    }
}

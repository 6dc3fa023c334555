// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.cable.Run;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.wave.HalfSine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Exercises for tests: 100 m of a line without loss, 75 Ω and 85 %, so that places are known exactly. */
public final class SampleExercises {

    /** Velocity of the line, over that of light. */
    public static final double VELOCITY = 0.85;

    private SampleExercises() {}

    /**
     * Makes an exercise of which the brief states the velocity and the record shows all hardware.
     *
     * @param events events of its cable
     * @return the exercise
     */
    public static Exercise with(Event... events) {
        return with(VelocityRule.fixed(VELOCITY), false, events);
    }

    /**
     * Makes an exercise.
     *
     * @param velocity what may be set as velocity
     * @param recordMayLie whether the record may lie
     * @param events events of its cable
     * @return the exercise
     */
    public static Exercise with(VelocityRule velocity, boolean recordMayLie, Event... events) {
        Cable cable = new Cable(
                "test line",
                List.of(new Run(Catalogue.standard().type("lossless-75"), 100)),
                List.of(events),
                new FarEnd.Open());
        return of(cable, velocity, record(recordMayLie, events), true);
    }

    /**
     * Makes an exercise about a cable.
     *
     * @param cable the cable
     * @param velocity what may be set as velocity
     * @param record the drawings
     * @param endIsGiven whether the end is given
     * @return the exercise
     */
    public static Exercise of(Cable cable, VelocityRule velocity, AsBuiltRecord record, boolean endIsGiven) {
        Settings settings = new Settings(new HalfSine(10e-9), VELOCITY, 130, 0, 16);
        Permitted permitted = new Permitted(
                List.of(new HalfSine(10e-9), new HalfSine(4e-9)),
                velocity,
                List.of(130.0),
                List.of(0.0),
                List.of(1, 16),
                List.of(LineEnd.NEAR, LineEnd.FAR));
        return new Exercise(
                "test",
                "A test line",
                "Read the line.",
                List.of(Caution.LOCAL_CODES),
                cable,
                record,
                Instrument.usual(75),
                new Start(settings, LineEnd.NEAR),
                permitted,
                OptionalDouble.empty(),
                List.of(new Hint("Look at the sign.", 2), new Hint("Look where it comes back.", 3)),
                "It was so.",
                Optional.empty(),
                1,
                endIsGiven);
    }

    private static AsBuiltRecord record(boolean mayLie, Event... events) {
        List<RecordedItem> items = new ArrayList<>();
        for (Event event : events) {
            EventKind kind = event.kind();
            if (!mayLie && kind.nature() == Nature.HARDWARE) {
                items.add(new RecordedItem(event.id(), event.startMetres(), kind, kind.id()));
            }
        }
        items.sort(Comparator.comparingDouble(RecordedItem::positionMetres));
        return new AsBuiltRecord(
                OptionalDouble.of(100), items, new RecordedEnd(RecordedEnd.Kind.OPEN, "open"), "invented", mayLie);
    }
}

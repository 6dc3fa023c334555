// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.lessons.bench.edit.RecordDifference.What;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.line.Catalogue;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RecordComparisonTest {

    private static final BenchTexts TEXTS = new BenchTexts(Locale.ROOT);

    private static final Cable CABLE = new Cable(
            "Two lengths",
            List.of(
                    new Run(Catalogue.standard().type("drop-6-foam"), 60),
                    new Run(Catalogue.standard().type("drop-11-foam"), 40.04)),
            List.of(
                    new Splice("S1", 20.03, 3e-9, 0, 0.01),
                    new Pinch("P1", 35, 0.1, 0.3, Profile.FLAT),
                    new Splice("S2", 80, 3e-9, 0, 0.01)),
            FarEnd.Terminated.byOhms(75));

    private static List<RecordDifference> differences(AsBuiltRecord record) {
        return RecordComparison.of(record, CABLE);
    }

    private static RecordDifference only(AsBuiltRecord record) {
        List<RecordDifference> all = differences(record);
        assertEquals(1, all.size(), all.toString());
        return all.get(0);
    }

    @Test
    void honestRecordDiffersInNothing() {
        assertEquals(List.of(), differences(RecordEdits.of(CABLE, TEXTS)));
    }

    @Test
    void itemThatIsMovedIsAtAWrongPlace() {
        RecordDifference moved = only(RecordEdits.moved(RecordEdits.of(CABLE, TEXTS), "S2", 77.5));
        assertEquals(new RecordDifference(What.PLACE, "S2", OptionalDouble.of(77.5), OptionalDouble.of(80)), moved);
    }

    @Test
    void changeOfCableIsComparedWithTheNearestChange() {
        RecordDifference moved = only(RecordEdits.moved(RecordEdits.of(CABLE, TEXTS), "change1", 58));
        assertEquals(What.PLACE, moved.what());
        assertEquals(60, moved.trueMetres().getAsDouble());
        AsBuiltRecord twice =
                RecordEdits.planned(RecordEdits.of(CABLE, TEXTS), CABLE, EventKind.CABLE_CHANGE, 90, TEXTS);
        assertEquals(What.NEVER_BUILT, only(twice).what());
        assertEquals(
                OptionalDouble.of(60),
                only(RecordEdits.without(RecordEdits.of(CABLE, TEXTS), "change1"))
                        .trueMetres());
    }

    @Test
    void whatIsNotDrawnAndWhatWasNeverBuiltAreTold() {
        assertEquals(
                new RecordDifference(What.NOT_DRAWN, "S1", OptionalDouble.empty(), OptionalDouble.of(20.03)),
                only(RecordEdits.without(RecordEdits.of(CABLE, TEXTS), "S1")));
        assertEquals(
                What.NEVER_BUILT,
                only(RecordEdits.planned(RecordEdits.of(CABLE, TEXTS), CABLE, EventKind.TAP, 50, TEXTS))
                        .what());
    }

    @Test
    void wrongKindLengthAndEndAreTold() {
        AsBuiltRecord honest = RecordEdits.of(CABLE, TEXTS);
        RecordedItem tap = new RecordedItem("S1", 20, EventKind.TAP, "tap");
        assertEquals(What.KIND, only(RecordEdits.changed(honest, "S1", tap)).what());
        RecordDifference longer = only(RecordEdits.withLength(honest, OptionalDouble.of(120)));
        assertEquals(
                new RecordDifference(What.LENGTH, "", OptionalDouble.of(120), OptionalDouble.of(CABLE.lengthMetres())),
                longer);
        assertEquals(
                What.END,
                only(RecordEdits.withEnd(honest, new RecordedEnd(RecordedEnd.Kind.OPEN, "left open")))
                        .what());
        assertEquals(
                List.of(),
                differences(RecordEdits.withEnd(honest, new RecordedEnd(RecordedEnd.Kind.NOT_SAID, "not said"))));
    }

    @Test
    void everyWayOfSpoilingShows() {
        for (long seed = 0; seed < 20; seed++) {
            for (RecordSpoiler way : RecordSpoiler.values()) {
                AsBuiltRecord spoilt = way.spoil(RecordEdits.of(CABLE, TEXTS), CABLE, seed, TEXTS);
                List<What> shown =
                        differences(spoilt).stream().map(RecordDifference::what).toList();
                What wanted =
                        switch (way) {
                            case WRONG_DISTANCE -> What.PLACE;
                            case LEFT_OUT -> What.NOT_DRAWN;
                            case NEVER_BUILT -> What.NEVER_BUILT;
                        };
                assertEquals(List.of(wanted), shown, way + " with seed " + seed);
            }
        }
    }
}

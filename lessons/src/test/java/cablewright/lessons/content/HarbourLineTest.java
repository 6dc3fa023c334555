// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.marking.MarkingRules;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is asked of built-in content, exercise by exercise. */
class HarbourLineTest {

    private static final Marker MARKER = new Marker();

    static List<Exercise> exercises() {
        return BuiltInLessons.find("harbour-line").orElseThrow().exercises();
    }

    @Test
    void thereAreEightExercisesAndTheWorldSaysThatItIsInvented() {
        Lesson lesson = BuiltInLessons.find("harbour-line").orElseThrow();

        assertEquals(8, lesson.exercises().size());
        assertTrue(lesson.worldNote().contains("Saltmarsh Point")
                && lesson.worldNote().contains("invented"));
        assertEquals(Optional.of(lesson), BuiltInLessons.find("harbour-line"));
        assertEquals(Optional.empty(), BuiltInLessons.find("no-such-lesson"));
    }

    @Test
    void theFileIsInCanonicalForm() throws IOException, LessonFormatException {
        try (InputStream in = BuiltInLessons.class.getResourceAsStream("harbour-line.json")) {
            byte[] bytes = in.readAllBytes();
            Document read = new DocumentReader().parse("harbour-line.json", bytes);
            assertArrayEquals(bytes, new DocumentWriter().bytes(read));
        }
    }

    @Test
    void theCablesAreOfSeveralFamilies() {
        Set<String> types = new HashSet<>();
        exercises().forEach(e -> types.add(e.cable().runs().get(0).type().id()));
        assertEquals(Set.of("drop-6-foam", "drop-11-foam", "hardline-500", "pair-24", "cat-5e"), types);
    }

    @ParameterizedTest
    @CsvSource({
        "breakwater-camera, 2",
        "pilot-station-phone, 1",
        "lamp-house-feeder, 3",
        "antenna-mast, 3",
        "ferry-gate, 2",
        "slipway-cable, 2",
        "greenhouse-sensor, 2",
        "reel-on-the-dock, 0"
    })
    void everyEventIsAskedForButWhatNobodyCanSee(String id, int count) {
        AnswerKey demand = MARKER.demand(
                BuiltInLessons.find("harbour-line").orElseThrow().exercise(id).orElseThrow());

        assertEquals(count, demand.demanded().size(), () -> demand.events().toString());
        for (LineEvent event : demand.events()) {
            assertEquals(standing(id, event), event.standing());
        }
    }

    /** A well made splice of a telephone pair is all but invisible at 118 m. */
    private static Requirement standing(String id, LineEvent event) {
        if (event.kind() == EventKind.OFF_CENTRE) {
            return Requirement.HIDDEN;
        }
        boolean splicedPair = id.equals("pilot-station-phone") && event.kind() == EventKind.SPLICE;
        return splicedPair ? Requirement.MARGINAL : Requirement.DEMANDED;
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void aPerfectReaderGetsAllMarks(Exercise exercise) {
        MarkSheet sheet = MARKER.mark(exercise, KeyedAnswer.of(MARKER.demand(exercise)));

        assertEquals(sheet.maximum(), sheet.marks(), 1e-9);
        assertTrue(sheet.maximum() >= 10);
        assertEquals(0, sheet.needlessDigs());
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void handingInNothingEarnsNothing(Exercise exercise) {
        Attempt nothing =
                new Attempt(exercise.id(), "Nobody", List.of(), exercise.start().settings());
        assertEquals(0, MARKER.mark(exercise, nothing).marks());
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void turningEveryVerdictRoundDigsUpAllThatBelongsAndLeavesAllDamage(Exercise exercise) {
        Attempt keyed = KeyedAnswer.of(MARKER.demand(exercise));
        List<Flag> turned = new ArrayList<>();
        for (Flag flag : keyed.flags()) {
            Verdict other = flag.verdict() == Verdict.DAMAGE ? Verdict.BELONGS : Verdict.DAMAGE;
            turned.add(new Flag(
                    flag.letter(),
                    flag.end(),
                    flag.startMetres(),
                    flag.endMetres(),
                    flag.kind(),
                    other,
                    flag.velocityFraction(),
                    flag.stimulus()));
        }
        MarkSheet sheet = MARKER.mark(exercise, new Attempt(exercise.id(), "Contrary", turned, keyed.settings()));

        long belonging = keyed.flags().stream()
                .filter(f -> f.verdict() == Verdict.BELONGS)
                .count();
        assertEquals(belonging, sheet.needlessDigs());
        assertEquals(keyed.flags().size() - belonging, sheet.damageLeft());
    }

    /** Fair means: read off the trace as the introduction says, the place counts in full at the settings named. */
    @ParameterizedTest
    @MethodSource("exercises")
    void whoeverReadsHalfWayUpTheEdgeIsWithinTheTolerance(Exercise exercise) {
        for (LineEvent event : MARKER.demand(exercise).demanded()) {
            for (PlaceVisibility place : Views.sight(
                            exercise,
                            event.eventId().orElseThrow(),
                            event.best().settings(),
                            event.best().end())
                    .places()) {
                assertEquals(Visibility.CLEAR, place.visibility(), event::toString);
                double read = Views.halfWayUp(
                        exercise,
                        event.eventId().orElseThrow(),
                        place,
                        event.best().settings(),
                        event.best().end());
                double velocity = event.best().settings().velocityFraction();
                double tolerance = MarkingRules.toleranceMetres(exercise, velocity, place.shownMetres());
                assertEquals(place.shownMetres(), read, tolerance, () -> exercise.id() + " " + place);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void whereSomeoneMayDigOrTouchALiveLineTheCautionsSaySo(Exercise exercise) {
        String brief = exercise.brief() + exercise.explanation();
        assertEquals(
                brief.contains("to dig") || brief.contains("to open") || brief.contains("to replace"),
                exercise.cautions().contains(Caution.DIGGING),
                exercise.id());
        if (brief.contains("telephone")) {
            assertTrue(exercise.cautions().contains(Caution.RINGING_VOLTAGE));
        }
        if (brief.contains("Plant power")) {
            assertTrue(exercise.cautions().contains(Caution.LIVE_PLANT_POWER));
        }
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void theRecordNamesTheHardwareThatIsThere(Exercise exercise) {
        exercise.record().items().forEach(item -> {
            assertEquals(
                    item.kind(), exercise.cable().event(item.id()).orElseThrow().kind());
            assertEquals(
                    item.positionMetres(),
                    exercise.cable().event(item.id()).orElseThrow().startMetres());
        });
        assertEquals(
                exercise.record().lengthMetres().orElseThrow(), exercise.cable().lengthMetres());
    }
}

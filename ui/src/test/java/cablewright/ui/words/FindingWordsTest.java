// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.paths.Reflector;
import cablewright.ui.desktop.shell.Examples;
import cablewright.ui.words.FindingText.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Every sentence is held to the numbers of its finding. */
class FindingWordsTest {

    private static final Marker MARKER = new Marker();

    private final Exercise exercise = Examples.exercise("quay-3", Optional.empty());
    private final Words words = Words.in(LengthUnit.METRES, Locale.ROOT);
    private final FindingWords finding = new FindingWords(words, exercise);

    private static Flag flag(String letter, double metres, EventKind kind, Verdict verdict) {
        return new Flag(letter, LineEnd.NEAR, metres, OptionalDouble.empty(), kind, verdict, 0.85);
    }

    private List<FindingText> told(Flag... flags) {
        MarkSheet sheet = MARKER.mark(
                exercise,
                new Attempt(
                        "quay-3", "trainee", List.of(flags), exercise.start().settings()));
        return finding.tell(sheet);
    }

    private static FindingText of(List<FindingText> all, String letter) {
        return all.stream()
                .filter(one -> one.letter().equals(Optional.of(letter)))
                .findFirst()
                .orElseThrow();
    }

    private LineEvent event(String id) {
        return MARKER.demand(exercise).events().stream()
                .filter(one -> one.is(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRightFlagTellsHeightLookAndRecord() {
        FindingText told = of(told(flag("A", 31.4, EventKind.SPLICE, Verdict.BELONGS)), "A");
        assertEquals(Outcome.RIGHT, told.outcome());
        assertEquals("10 / 10", told.marks());
        String height =
                words.quantities().percent(event("S1").best().contrastVolts()).replace("+", "");
        assertTrue(told.why().contains(height), told.why());
        assertTrue(told.why().contains("In the record."), told.why());
        assertTrue(
                told.why().contains(words.stimulus(event("S1").best().settings().stimulus())),
                "a height names its setting: " + told.why());
    }

    @Test
    void aWrongKindIsNamed() {
        FindingText told = of(told(flag("C", 84.1, EventKind.SPLICE, Verdict.DAMAGE)), "C");
        assertEquals(Outcome.PARTLY, told.outcome());
        assertTrue(told.why().startsWith("Here is a pinch, not a splice."), told.why());
    }

    @Test
    void aMisreadPlaceTellsWhatWasReadWhereItShowsAndTheTolerance() {
        FindingText told = of(told(flag("A", 85.6, EventKind.PINCH, Verdict.DAMAGE)), "A");
        assertTrue(told.why().contains(words.quantities().length(85.6)), told.why());
        // A pinch of 0.12 m from 84.1 m on is right all along.
        double velocity = exercise.cable().runs().get(0).type().section().velocityFraction();
        double off = 85.6 - 84.22 * 0.85 / velocity;
        assertTrue(
                told.why().contains("which is " + words.quantities().length(off) + " too far"),
                "set over true velocity: " + told.why());
        assertTrue(told.why().contains(words.quantities().length(0.8)), "1 % of 84 m is the tolerance: " + told.why());
    }

    @Test
    void aNeedlessDigOverASpliceTellsWhatItCosts() {
        FindingText told = of(told(flag("A", 31.4, EventKind.PINCH, Verdict.DAMAGE)), "A");
        assertEquals(Outcome.WRONG, told.outcome());
        assertTrue(told.why().contains("a splice, belongs. It costs 5 marks."), told.why());
    }

    @Test
    void aFlagOnNothingAsDamageIsANeedlessDigOverNothing() {
        FindingText told = of(told(flag("A", 50, EventKind.PINCH, Verdict.DAMAGE)), "A");
        assertEquals(Outcome.WRONG, told.outcome());
        assertTrue(told.why().contains("over nothing. It costs 5 marks."), told.why());
        assertEquals("−5", told.marks());
    }

    @Test
    void damageCalledBelongingStaysInTheGround() {
        FindingText told = of(told(flag("A", 84.1, EventKind.PINCH, Verdict.BELONGS)), "A");
        assertTrue(
                told.why().contains("This is damage, a pinch: marked \"belongs\", it would be left in the ground."),
                told.why());
    }

    @Test
    void aFlagThatNamesWhatNobodyCouldSeeIsToldSo() {
        List<Event> events = new ArrayList<>(exercise.cable().events());
        events.add(new Splice("tiny", 60, 1e-11, 0, 0.01));
        Exercise withTiny = ExerciseEdits.withCable(exercise, exercise.cable().withEvents(events));
        Flag guess = flag("A", 60, EventKind.SPLICE, Verdict.BELONGS);
        MarkSheet sheet = MARKER.mark(
                withTiny,
                new Attempt(
                        "quay-3", "trainee", List.of(guess), withTiny.start().settings()));
        FindingText told = of(new FindingWords(words, withTiny).tell(sheet), "A");
        assertEquals(Outcome.TOLD, told.outcome());
        assertTrue(told.why().contains("no permitted setting shows it"), told.why());
    }

    @Test
    void whatWasMissedTellsTheHeightAndTheSettingThatShowsItBest() {
        FindingText missed = told().stream()
                .filter(one -> one.title().contains("pinch"))
                .findFirst()
                .orElseThrow();
        LineEvent pinch = event("P1");
        assertEquals(Outcome.WRONG, missed.outcome());
        assertEquals("0 / 10", missed.marks());
        assertTrue(
                missed.why()
                        .contains(words.quantities()
                                .percent(pinch.best().contrastVolts())
                                .replace("+", "")),
                missed.why());
        assertTrue(missed.why().contains(words.stimulus(pinch.best().settings().stimulus())), missed.why());
    }

    @Test
    void wrongVelocityIsToldApartFromAMisreading() {
        PlaceMark place = new PlaceMark(PlaceMark.Edge.ONLY, 89.1, 84.1, 84.1, 89.1, 84.1, 0, 0, 0.85, 0.8, 2, 4);
        String stated = finding.wrongPlaceByVelocity(new Finding.WrongPlaceByVelocity(place, 0.90, 0.85, true))
                .why();
        for (String number : List.of("0.900", "0.850", "89.1", "84.1")) {
            assertTrue(stated.contains(number), stated);
        }
        String unstated = finding.wrongPlaceByVelocity(new Finding.WrongPlaceByVelocity(place, 0.90, 0.85, false))
                .why();
        assertTrue(unstated.contains("5.0\u00a0m beyond"), unstated);
    }

    @Test
    void aGhostTellsItsPathItsPlaceAndItsHeight() {
        Flag flag = flag("G", 168.2, EventKind.PINCH, Verdict.BELONGS);
        FindingText told = finding.ghostTakenForEvent(new Finding.GhostTakenForEvent(
                flag,
                List.of(Reflector.event("P1"), new Reflector.Port(), Reflector.event("P1")),
                168.2,
                -0.0012,
                -3,
                List.of()));
        for (String part : List.of("the pinch at", "84.1", "the port", "168.2", "down by 0.12")) {
            assertTrue(told.why().contains(part), told.why());
        }
    }

    @Test
    void inFeetEveryLengthIsInFeet() {
        FindingWords feet = new FindingWords(words.with(LengthUnit.FEET), exercise);
        MarkSheet sheet = MARKER.mark(
                exercise,
                new Attempt(
                        "quay-3",
                        "trainee",
                        List.of(flag("A", 85.6, EventKind.PINCH, Verdict.DAMAGE)),
                        exercise.start().settings()));
        for (FindingText told : feet.tell(sheet)) {
            assertFalse((told.title() + told.why()).matches(".*\\d\u00a0m\\b.*"), told.toString());
        }
    }

    @Test
    void noSentenceHasAnEmptyPlaceInIt() {
        for (FindingText told : told(flag("A", 31.4, EventKind.SPLICE, Verdict.BELONGS))) {
            assertFalse(
                    told.why().contains("{")
                            || told.why().contains("null")
                            || told.why().contains("  "),
                    told.why());
        }
    }
}

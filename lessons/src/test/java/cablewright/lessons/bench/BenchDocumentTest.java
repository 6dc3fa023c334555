// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.DocumentChange.What;
import cablewright.lessons.bench.edit.BenchTexts;
import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.bench.edit.EventClip;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.bench.edit.RecordEdits;
import cablewright.lessons.bench.edit.RecordSpoiler;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Run;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.solve.PropagationCache;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Edits of the document on the Bench. */
class BenchDocumentTest {

    private static final BenchTexts TEXTS = new BenchTexts(Locale.ROOT);

    private static BenchDocument street() {
        return BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT);
    }

    @ParameterizedTest
    @EnumSource(BenchTemplate.class)
    void aTemplateIsSoundHardwareWithAnHonestRecord(BenchTemplate template) {
        BenchDocument document = template.document(Locale.ROOT);
        AsBuiltRecord record = document.record();
        for (Event event : document.cable().events()) {
            boolean hardware = event.kind().nature() == cablewright.simulator.cable.Nature.HARDWARE;
            assertEquals(hardware, record.shows(event.id()), event.id());
            if (hardware) {
                RecordedItem item = record.items().stream()
                        .filter(it -> it.id().equals(event.id()))
                        .findFirst()
                        .orElseThrow();
                assertEquals(event.startMetres(), item.positionMetres(), 0.05 + 1e-9);
            }
        }
        assertFalse(record.mayLie());
        assertTrue(document.exercise().cautions().contains(Caution.LOCAL_CODES));
        assertTrue(document.exercise().brief().contains("invented"));
        assertTrue(UsualView.onTheBench(document.exercise())
                .allows(
                        document.exercise().start().settings(),
                        document.exercise().start().end()));
    }

    @Test
    void whatBelongsOnAStreetAndARiserShowsClearlyWhenTheyOpen() {
        for (BenchTemplate template : List.of(BenchTemplate.STREET_OF_TAPS, BenchTemplate.BUILDING_RISER)) {
            var exercise = template.document(Locale.ROOT).exercise();
            List<EventVisibility> sights = VisibilityAnalysis.of(
                    exercise.cable(),
                    exercise.instrument(),
                    exercise.start().settings(),
                    exercise.start().end());
            for (EventVisibility sight : sights) {
                assertEquals(Visibility.CLEAR, sight.visibility(), template + " " + sight);
            }
        }
    }

    /** To a fast pulse a load coil is almost an open, so what lies behind the first is not seen (textbook knowledge). */
    @Test
    void onALoadedLoopOnlyTheFirstCoilIsClear() {
        var exercise = BenchTemplate.LOADED_LOOP.document(Locale.ROOT).exercise();
        List<EventVisibility> sights = VisibilityAnalysis.of(
                exercise.cable(),
                exercise.instrument(),
                exercise.start().settings(),
                exercise.start().end());
        assertEquals(Visibility.CLEAR, sights.get(0).visibility());
        assertTrue(sights.stream().skip(1).noneMatch(sight -> sight.visibility() == Visibility.CLEAR));
    }

    @Test
    void anEventThatIsRenamedKeepsItsPlaceInTheRecord() {
        BenchDocument renamed = street().renamed("tap2", "tap-by-the-well");
        assertTrue(renamed.record().shows("tap-by-the-well"));
        assertTrue(renamed.cable().event("tap2").isEmpty());
        assertThrows(IllegalArgumentException.class, () -> street().renamed("tap2", "tap1"));
        assertThrows(IllegalArgumentException.class, () -> street().renamed("tap2", "no blanks"));
    }

    @Test
    void aRunThatWouldEndBeforeAnEventIsRefusedInWords() {
        Cable cable = street().cable();
        Run shorter = new Run(cable.runs().get(0).type(), 150);
        var refusal = assertThrows(IllegalArgumentException.class, () -> CableEdits.withRun(cable, 0, shorter));
        assertTrue(refusal.getMessage().contains("tap5"), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("150"), refusal.getMessage());
    }

    @Test
    void cuttingARunChangesNothingButTheNumberOfRuns() {
        Cable cable = street().cable();
        Cable cut = CableEdits.cutAt(cable, 80);
        assertEquals(2, cut.runs().size());
        assertEquals(cable.lengthMetres(), cut.lengthMetres(), 1e-9);
        assertEquals(cable.events(), cut.events());
        assertThrows(IllegalArgumentException.class, () -> CableEdits.cutAt(cut, 80));
    }

    @Test
    void whatCanNotBeDoneToACableIsRefusedBeforeItIsOnIt() {
        Cable coax = street().cable();
        assertThrows(IllegalArgumentException.class, () -> Insertable.SPREAD_PAIR.putOn(coax, 50, 1));
        Cable wet = Insertable.WATER.putOn(coax, 50, 1);
        assertTrue(wet.events().size() == coax.events().size() + 1);
    }

    @Test
    void pastingElsewhereKeepsDistancesAndGivesNewNames() {
        Cable cable = street().cable();
        EventClip clip = EventClip.of(cable, Set.of("tap1", "tap3")).orElseThrow();
        EventClip carried = EventClip.ofText(clip.text()).orElseThrow();
        EventClip.Pasted pasted = carried.paste(cable, 100);
        assertEquals(cable.events().size() + 2, pasted.cable().events().size());
        Event first = pasted.cable().event(pasted.ids().get(0)).orElseThrow();
        Event second = pasted.cable().event(pasted.ids().get(1)).orElseThrow();
        assertEquals(100, first.startMetres(), 1e-9);
        assertEquals(100 + 103 - 28, second.startMetres(), 1e-9);
        assertEquals(
                pasted.cable().events().size(),
                pasted.cable().events().stream().map(Event::id).distinct().count());
        assertTrue(EventClip.ofText("not a cable").isEmpty());
    }

    @Test
    void pastingNearTheEndMovesBackOntoTheCable() {
        Cable cable = street().cable();
        EventClip.Pasted pasted =
                EventClip.of(cable, Set.of("tap1", "tap3")).orElseThrow().paste(cable, 220);
        pasted.ids()
                .forEach(id -> assertTrue(pasted.cable().event(id).orElseThrow().endMetres() <= cable.lengthMetres()));
    }

    @Test
    void recordsAreSpoiltInTheThreeWays() {
        BenchDocument document = street();
        AsBuiltRecord honest = document.record();
        AsBuiltRecord shifted = RecordSpoiler.WRONG_DISTANCE.spoil(honest, document.cable(), 3, TEXTS);
        List<RecordedItem> moved = shifted.items().stream()
                .filter(item -> !honest.items().contains(item))
                .toList();
        assertEquals(1, moved.size());
        double true_ = document.cable().event(moved.get(0).id()).orElseThrow().startMetres();
        assertTrue(Math.abs(moved.get(0).positionMetres() - true_) > 0.9);

        AsBuiltRecord lacking = RecordSpoiler.LEFT_OUT.spoil(honest, document.cable(), 3, TEXTS);
        assertEquals(honest.items().size() - 1, lacking.items().size());

        AsBuiltRecord dreaming = RecordSpoiler.NEVER_BUILT.spoil(honest, document.cable(), 3, TEXTS);
        RecordedItem planned = dreaming.items().stream()
                .filter(item -> !honest.shows(item.id()))
                .findFirst()
                .orElseThrow();
        assertEquals(EventKind.TAP, planned.kind());
        assertTrue(document.cable().event(planned.id()).isEmpty());

        for (AsBuiltRecord spoilt : List.of(shifted, lacking, dreaming)) {
            assertTrue(spoilt.mayLie());
        }
        assertEquals(shifted, RecordSpoiler.WRONG_DISTANCE.spoil(honest, document.cable(), 3, TEXTS));
    }

    @Test
    void aMovementIsOneStepAndIsUndoneAsOne() {
        EditHistory<Integer> history = new EditHistory<>(0);
        history.step("one", 1);
        for (int i = 2; i < 10; i++) {
            history.move("drag", "depth", i);
        }
        history.endMovement();
        history.move("drag", "depth", 20);
        history.undo();
        assertEquals(9, history.now());
        history.undo();
        assertEquals(1, history.now());
        assertEquals(Optional.of("one"), history.undoName());
        assertEquals(Optional.of("drag"), history.redoName());
        history.undo();
        history.undo();
        assertEquals(0, history.now());
        history.redo();
        assertEquals(1, history.now());
        history.step("same", 1);
        assertEquals(Optional.of("drag"), history.redoName(), "a step that changes nothing is none");
    }

    @Test
    void aMovementThatBeginsWithNothingIsUndoneFromWhereItChangedSomething() {
        EditHistory<Integer> history = new EditHistory<>(1);
        history.move("type", "label", 1);
        history.move("type", "label", 2);
        history.undo();
        assertEquals(1, history.now());
        assertEquals(Optional.empty(), history.undoName());
    }

    @Test
    void whatChangedIsToldPartByPart() {
        BenchDocument before = street();
        BenchDocument told = before.with(ExerciseEdits.withTitle(before.exercise(), "Another title"));
        assertEquals(Set.of(What.BRIEF_CHANGED), kinds(before, told));
        BenchDocument longer = before.withCable(it ->
                CableEdits.withRunAfter(it, 0, new Run(Catalogue.standard().type("hardline-625"), 20)));
        assertEquals(Set.of(What.CABLE_CHANGED), kinds(before, longer));

        BenchDocument cable = before.withCable(it -> CableEdits.moved(it, "tap2", 70))
                .withCable(it -> CableEdits.without(it, Set.of("tap4")))
                .withCable(it -> Insertable.PINCH.putOn(it, 120, 1))
                .withRecord(record -> RecordEdits.without(record, "tap1"));
        assertEquals(
                Set.of(What.EVENT_MOVED, What.EVENT_REMOVED, What.EVENT_ADDED, What.RECORD_CHANGED),
                kinds(before, cable));
        BenchDocument two = before.adding(before.exercise());
        assertEquals(Set.of(What.EXERCISE_ADDED), kinds(before, two));
        assertEquals(Set.of(What.ORDER), kinds(two, two.movedBy(-1)));
        assertEquals(List.of(), DocumentChanges.between(before.lesson(), before.lesson()));
    }

    private static Set<What> kinds(BenchDocument before, BenchDocument after) {
        return DocumentChanges.between(before.lesson(), after.lesson()).stream()
                .map(DocumentChange::what)
                .collect(Collectors.toSet());
    }

    @Test
    void exercisesAreAddedMovedAndTakenAway() {
        BenchDocument two = street().adding(
                        BenchTemplate.BUILDING_RISER.document(Locale.ROOT).exercise());
        assertEquals(1, two.index());
        BenchDocument three = two.adding(two.exercise());
        assertEquals("custom-house-riser-2", three.exercise().id());
        assertSame(three, three.movedBy(1), "there is no place behind the last");
        BenchDocument back = three.withoutExercise().withoutExercise();
        assertEquals(street().exercise(), back.exercise());
        assertThrows(IllegalArgumentException.class, back::withoutExercise);
    }

    @Test
    void theExplanationIsDraftedFromHowEachEventShows() {
        BenchDocument wet = street().withCable(cable -> Insertable.PINCH.putOn(cable, 120, 1));
        String draft = ExplanationDrafts.of(wet.exercise(), new PropagationCache(), Locale.ROOT, () -> false);
        assertTrue(draft.contains("**pinch** at {120"), draft);
        assertEquals(wet.cable().events().size(), draft.lines().count());
    }
}

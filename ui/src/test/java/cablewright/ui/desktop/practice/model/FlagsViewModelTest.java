// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.shell.Examples;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FlagsViewModelTest {

    private final Exercise exercise = Examples.exercise("x", Optional.empty());
    private final SettingsViewModel settings = new SettingsViewModel(exercise.permitted(), exercise.start());
    private final FlagsViewModel flags = new FlagsViewModel(settings);

    private List<String> letters() {
        return flags.draftsProperty().get().stream().map(FlagDraft::letter).toList();
    }

    @Test
    void lettersGoOnAfterZAndFillGaps() {
        for (int i = 0; i < 28; i++) {
            flags.place(i);
        }
        assertEquals(List.of("Y", "Z", "AA", "AB"), letters().subList(24, 28));
        flags.remove("C");
        flags.place(99);
        assertEquals("C", letters().get(2));
    }

    @Test
    void theVerdictFollowsTheKindUntilItIsSaidOtherwise() {
        flags.place(10);
        flags.say("A", EventKind.SPLICE);
        assertEquals(
                Optional.of(Verdict.BELONGS),
                flags.selectedDraft().orElseThrow().verdict());
        flags.say("A", EventKind.PINCH);
        assertEquals(
                Optional.of(Verdict.DAMAGE), flags.selectedDraft().orElseThrow().verdict());
        flags.judge("A", Verdict.BELONGS);
        flags.say("A", EventKind.WATER);
        assertEquals(
                Optional.of(Verdict.BELONGS),
                flags.selectedDraft().orElseThrow().verdict());
    }

    @Test
    void everyStepIsUndoneAndRedone() {
        flags.place(10);
        flags.say("A", EventKind.SPLICE);
        flags.moveSelected(12);
        flags.undo();
        assertEquals(10, flags.draftsProperty().get().get(0).startMetres(), 1e-9);
        flags.undo();
        flags.undo();
        assertEquals(List.of(), letters());
        assertFalse(flags.undoableProperty().get());
        flags.redo();
        flags.redo();
        flags.redo();
        assertEquals(12, flags.draftsProperty().get().get(0).startMetres(), 1e-9);
    }

    @Test
    void aDragIsOneStepHoweverManyPlacesItPasses() {
        flags.place(10);
        for (int i = 0; i < 20; i++) {
            flags.drag("A", false, 10 + i);
        }
        flags.drop();
        flags.undo();
        assertEquals(10, flags.draftsProperty().get().get(0).startMetres(), 1e-9);
    }

    /** Distance is velocity times time: a flag stays at its time when the velocity is changed. */
    @Test
    void aFlagStaysOnItsPlaceOfTheTraceWhenTheVelocityChanges() {
        flags.place(85);
        settings.setVelocity(0.90);
        assertEquals(90, flags.draftsProperty().get().get(0).startMetres(), 1e-9);
        assertEquals(90, flags.pennants().get(0).startMetres(), 1e-9);
        settings.setVelocity(0.85);
        assertEquals(85, flags.draftsProperty().get().get(0).startMetres(), 1e-9);
    }

    @Test
    void aStretchSetBackwardsIsHandedInForwards() {
        flags.place(106);
        flags.stretchSelected(101);
        flags.say("A", EventKind.WATER);
        Flag flag = flags.freeze().get(0);
        assertEquals(101, flag.startMetres(), 1e-9);
        assertEquals(OptionalDouble.of(106), flag.endMetres());
    }

    @Test
    void afterHandingInNothingChanges() {
        flags.place(10);
        flags.say("A", EventKind.SPLICE);
        flags.freeze();
        flags.place(20);
        flags.removeSelected();
        flags.moveSelected(5);
        flags.drag("A", false, 3);
        flags.undo();
        assertEquals(List.of("A"), letters());
        assertEquals(10, flags.draftsProperty().get().get(0).startMetres(), 1e-9);
    }

    @Test
    void flagsOfTheOtherEndAreKeptButNotDrawn() {
        flags.place(10);
        settings.endProperty().set(LineEnd.FAR);
        flags.place(20);
        assertEquals(1, flags.pennants().size());
        assertEquals("B", flags.pennants().get(0).letter());
        assertEquals(2, letters().size());
    }

    @Test
    void neighboursAreMetInOrderOfDistanceAndGoRound() {
        flags.place(50);
        flags.place(10);
        flags.place(90);
        flags.select("B");
        flags.selectNeighbour(1);
        assertEquals(Optional.of("A"), flags.selectedProperty().get());
        flags.selectNeighbour(1);
        flags.selectNeighbour(1);
        assertEquals(Optional.of("B"), flags.selectedProperty().get());
        assertTrue(flags.firstIncomplete().isPresent());
    }
}

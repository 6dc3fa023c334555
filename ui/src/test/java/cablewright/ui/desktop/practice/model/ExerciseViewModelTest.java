// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.lattice.LatticeViewModel;
import cablewright.ui.desktop.shell.Examples;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.wave.WaveViewModel;
import cablewright.ui.drawing.lattice.Lattice;
import cablewright.ui.drawing.track.WavePlay;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ExerciseViewModelTest {

    private static final Marker MARKER = new Marker();

    private static ExerciseViewModel open(int number) {
        ExerciseViewModel model = new ExerciseViewModel(
                Examples.lesson().exercises().get(number),
                MARKER,
                Threads.sameThread(),
                new Texts("cablewright.ui.desktop.shell.desktop", Locale.ROOT),
                Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));
        model.open();
        return model;
    }

    @Test
    void openingShowsATraceAndKeepsTheCableShut() {
        ExerciseViewModel model = open(0);
        assertNotNull(model.traceTrack().traceProperty().get());
        assertTrue(model.reveal().cableTrack().drawingProperty().get().isEmpty());
        assertFalse(model.workingProperty().get());
    }

    @Test
    void eachSettingGivesATraceOfItsOwn() {
        ExerciseViewModel model = open(0);
        for (Setting setting : Setting.values()) {
            model.settings().step(setting, 1);
            assertEquals(
                    model.settings().settings(),
                    model.traceTrack().traceProperty().get().settings(),
                    setting.name());
        }
        assertEquals(LineEnd.FAR, model.settings().endProperty().get());
    }

    @Test
    void withAQuestionThereIsNoTraceBeforeItsAnswer() {
        ExerciseViewModel model = open(1);
        assertEquals(Phase.ASKED, model.phaseProperty().get());
        model.settings().step(Setting.GAIN, 1);
        assertNull(model.traceTrack().traceProperty().get());
        model.predict("no such answer", Optional.of("nearer"));
        model.predict("down", Optional.empty());
        assertEquals(Phase.ASKED, model.phaseProperty().get());
        model.predict("down", Optional.of("nearer"));
        assertNotNull(model.traceTrack().traceProperty().get());
    }

    @Test
    void commitWaitsForAFlagThatDoesNotSayWhatItIs() {
        ExerciseViewModel model = open(0);
        model.flags().place(31.4);
        model.flags().place(84.1);
        model.flags().say("B", EventKind.PINCH);
        model.commit();
        assertEquals(Phase.READING, model.phaseProperty().get());
        assertEquals("A", model.flags().selectedProperty().get().orElseThrow());
        assertTrue(
                model.adviceProperty().get().contains("A"),
                model.adviceProperty().get());
        model.flags().say("A", EventKind.SPLICE);
        assertEquals("", model.adviceProperty().get());
    }

    @Test
    void aRightReadingEarnsAllMarksAndOpensTheCable() {
        ExerciseViewModel model = open(0);
        model.flags().place(31.4);
        model.flags().say("A", EventKind.SPLICE);
        model.flags().place(84.1);
        model.flags().say("B", EventKind.PINCH);
        model.flags().place(101.4);
        model.flags().stretchSelected(106.1);
        model.flags().say("C", EventKind.WATER);
        model.commit();
        MarkSheet sheet = model.sheetProperty().get().orElseThrow();
        assertEquals(sheet.maximum(), sheet.marks(), 1e-9);
        assertEquals(30, sheet.maximum(), 1e-9);
        assertEquals(
                3,
                model.reveal()
                        .cableTrack()
                        .drawingProperty()
                        .get()
                        .orElseThrow()
                        .marks()
                        .size());
        assertEquals(3, model.reveal().cableTrack().sightsProperty().get().size());
    }

    @Test
    void hintsCostAndStopWhenThereAreNoMore() {
        ExerciseViewModel model = open(0);
        model.takeHint();
        model.takeHint();
        assertEquals(1, model.hintsTakenProperty().get());
        model.commit();
        assertEquals(2, model.sheetProperty().get().orElseThrow().hintCostMarks(), 1e-9);
    }

    @Test
    void afterCommitTheCableFollowsTheSettings() {
        ExerciseViewModel model = open(0);
        model.commit();
        double before = model.reveal()
                .cableTrack()
                .drawingProperty()
                .get()
                .orElseThrow()
                .endShownMetres();
        model.settings().setVelocity(0.80);
        double after = model.reveal()
                .cableTrack()
                .drawingProperty()
                .get()
                .orElseThrow()
                .endShownMetres();
        assertEquals(0.80 / 0.85, after / before, 1e-9);
    }

    @Test
    void theWavePlaysOnlyOnAnOpenCableIsComputedOnceAndStopsWhereItIsPut() {
        ExerciseViewModel model = open(0);
        WaveViewModel wave = model.reveal().wave();
        wave.toggle();
        assertFalse(model.reveal().cableTrack().isPlaying());
        model.commit();
        wave.toggle();
        assertTrue(wave.playingProperty().get());
        WavePlay computed = model.reveal().cableTrack().waveProperty().get().orElseThrow();
        double before = model.traceTrack().writtenToProperty().get().orElseThrow();
        wave.scrubTo(100);
        assertFalse(wave.playingProperty().get(), "who takes hold of it stops it");
        assertTrue(model.traceTrack().writtenToProperty().get().orElseThrow() > before);
        assertEquals(computed.seconds(100), wave.secondsProperty().get().orElseThrow(), 0);
        wave.step(-1);
        assertEquals(99, wave.frameProperty().get());
        wave.toggle();
        assertEquals(99, wave.frameProperty().get(), "it plays on from there");
        assertSame(
                computed, model.reveal().cableTrack().waveProperty().get().orElseThrow(), "it is not computed again");
        wave.scrubTo(1_000_000);
        assertEquals(computed.frames() - 1, wave.frameProperty().get());
        assertTrue(model.traceTrack().writtenToProperty().get().isEmpty(), "at its end the whole trace is written");
    }

    @Test
    void theLatticeOpensWithTheCableAndFollowsTheTrace() {
        ExerciseViewModel model = open(0);
        LatticeViewModel lattice = model.reveal().lattice();
        lattice.toggle();
        assertFalse(lattice.openProperty().get(), "shut until commit");
        model.commit();
        lattice.toggle();
        Lattice first = lattice.latticeProperty().get().orElseThrow();
        assertFalse(first.echoes().isEmpty());
        model.settings().step(Setting.END, 1);
        assertNotEquals(
                first.title(), lattice.latticeProperty().get().orElseThrow().title());
        lattice.toggle();
        assertFalse(lattice.openProperty().get());
        assertTrue(lattice.latticeProperty().get().isEmpty());
    }

    @Test
    void theCursorAndTheLatticePointAtEachOther() {
        ExerciseViewModel model = open(0);
        model.commit();
        LatticeViewModel lattice = model.reveal().lattice();
        lattice.toggle();
        Lattice drawn = lattice.latticeProperty().get().orElseThrow();
        lattice.step(1);
        assertEquals(Set.of(0), lattice.chosenProperty().get());
        double shown = drawn.echoes().get(0).path().shownMetres();
        assertEquals(shown, model.axis().cursorMetresProperty().get(), 1e-9);
        assertEquals(shown, model.traceTrack().lookHereProperty().get().get(0).fromMetres(), 1e-9);
        Lattice.Bump bump = drawn.bumps().stream()
                .filter(it -> !it.echoes().isEmpty())
                .reduce((a, b) -> b)
                .orElseThrow();
        model.axis().moveCursorTo(bump.shownMetres());
        assertEquals(bump.echoes(), lattice.chosenProperty().get());
        assertEquals(bump.description(), lattice.toldProperty().get());
        assertTrue(model.traceTrack().lookHereProperty().get().isEmpty());
    }

    @Test
    void aChangedSettingStopsTheWave() {
        ExerciseViewModel model = open(0);
        model.commit();
        model.reveal().wave().toggle();
        model.settings().step(Setting.GAIN, 1);
        assertFalse(model.reveal().cableTrack().isPlaying());
    }

    @Test
    void aWrongClaimCanBeSeenBesideTheTruthAndIsTakenAwayAgain() {
        ExerciseViewModel model = open(0);
        model.flags().place(84.1);
        model.flags().say("A", EventKind.SPLICE);
        model.commit();
        Claim claim = model.sheetProperty().get().orElseThrow().findings().stream()
                .flatMap(finding -> Claim.in(finding).stream())
                .findFirst()
                .orElseThrow();
        assertEquals("P1", claim.insteadOf().orElseThrow());
        model.reveal().compare(claim);
        double splice = largestNear(model.traceTrack().comparisonProperty().get(), 84.3);
        double pinch = largestNear(model.traceTrack().traceProperty().get(), 84.3);
        assertTrue(splice > 0.004 && pinch < 0, "a splice rises where the pinch falls: " + splice + ", " + pinch);
        model.reveal().compare(claim);
        assertNull(model.traceTrack().comparisonProperty().get());
    }

    /** The first swing after a place. */
    private static double largestNear(Trace trace, double metres) {
        double largest = 0;
        for (double place = metres - 0.3; place < metres + 0.3; place += 0.05) {
            double volts = trace.voltsAt(place);
            largest = Math.abs(volts) > Math.abs(largest) ? volts : largest;
        }
        return largest;
    }
}

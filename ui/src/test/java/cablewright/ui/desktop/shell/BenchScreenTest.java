// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchFile;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.RecoveryFolder;
import cablewright.lessons.bench.edit.BenchTexts;
import cablewright.lessons.bench.edit.RecordSpoiler;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.marking.MarkSheet;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.bench.model.BenchStore;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.RecentFiles;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.AxisViewModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The Bench in the real window: an instructor builds a cable by keys and by mouse, spoils its record, saves and reopens. */
@ExtendWith(ApplicationExtension.class)
class BenchScreenTest {

    private static final BenchTexts TEXTS = new BenchTexts(Locale.ROOT);

    private DesktopWindow window;
    private Hands hands;

    @TempDir
    Path folder;

    @Start
    void start(Stage stage) throws IOException {
        RecoveryFolder recovery = new RecoveryFolder(Files.createTempDirectory("cablewright-recovery"));
        window = new DesktopWindow(
                stage,
                WindowMemory.none(),
                Threads.sameThread(),
                ClassRecords.inMemory(),
                new BenchStore(Optional.of(recovery), RecentFiles.none()));
        window.show(Examples.lesson());
        hands = new Hands(stage);
    }

    private BenchViewModel bench() {
        return window.bench();
    }

    private AxisViewModel axis() {
        return bench().trace().axis();
    }

    private Cable cable() {
        return bench().document().now().cable();
    }

    private List<EventKind> kinds() {
        return cable().events().stream().map(Event::kind).toList();
    }

    private void openBench() {
        hands.type(KeyCode.DIGIT4, KeyCode.CONTROL);
    }

    /** Carries the cursor on by large steps, each a twentieth of what is shown. */
    private void insertByKeys(int steps, KeyCode letter) {
        for (int i = 0; i < steps; i++) {
            hands.type(KeyCode.RIGHT, KeyCode.CONTROL);
        }
        hands.type(KeyCode.I);
        hands.type(letter);
    }

    private void buildFiveEvents() {
        openBench();
        hands.type(KeyCode.HOME);
        insertByKeys(2, KeyCode.T);
        insertByKeys(2, KeyCode.P);
        insertByKeys(2, KeyCode.S);
        insertByKeys(2, KeyCode.W);
        insertByKeys(3, KeyCode.C);
    }

    @Test
    void fiveEventsAreBuiltByKeysTheRecordIsSpoiltAndTheFileHoldsIt() {
        buildFiveEvents();
        assertEquals(
                List.of(EventKind.TAP, EventKind.PINCH, EventKind.SPLICE, EventKind.WATER, EventKind.CONNECTOR),
                kinds());
        assertEquals(
                3, bench().document().now().record().items().size(), "honest drawings show hardware and no damage");
        assertEquals(5, bench().trace().cableTrack().sightsProperty().get().size());
        hands.run(() -> bench().document()
                .step(
                        "spoil",
                        before -> before.withRecord(
                                record -> RecordSpoiler.LEFT_OUT.spoil(record, before.cable(), 3, TEXTS))));
        assertEquals(2, bench().document().now().record().items().size());
        assertTrue(bench().files().unsavedProperty().get());

        BenchDocument built = bench().document().now();
        Path file = folder.resolve("line.json");
        hands.run(() -> bench().files().saveAs(file));
        assertFalse(bench().files().unsavedProperty().get());
        hands.type(KeyCode.DELETE);
        hands.type(KeyCode.S, KeyCode.CONTROL);
        assertEquals(4, cable().events().size());
        hands.type(KeyCode.Z, KeyCode.CONTROL);
        hands.type(KeyCode.S, KeyCode.CONTROL);
        hands.run(() -> bench().files().open(file));
        assertEquals(built.lesson(), bench().document().now().lesson());
        assertTrue(bench().files().notices().isEmpty(), "nothing was lost, so nothing is said");
    }

    @Test
    void aTraineeSolvesInPracticeWhatWasBuiltAndSaved() throws Exception {
        buildFiveEvents();
        hands.run(() -> bench().document()
                .step(
                        "spoil",
                        before -> before.withRecord(
                                record -> RecordSpoiler.LEFT_OUT.spoil(record, before.cable(), 3, TEXTS))));
        List<EventVisibility> sights =
                bench().trace().cableTrack().sightsProperty().get();
        Path file = folder.resolve("line.json");
        hands.run(() -> bench().files().saveAs(file));
        hands.run(() -> window.open(file));
        hands.type(KeyCode.DIGIT1, KeyCode.CONTROL);
        ExerciseViewModel exercise = window.practice().current();
        hands.run(() -> sights.forEach(sight -> flag(exercise, sight)));
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        MarkSheet sheet = exercise.sheetProperty().get().orElseThrow();
        assertEquals(0, sheet.damageMissed());
        assertEquals(0, sheet.needlessDigs(), "hardware that the drawing lacks still belongs where it may lie");
        assertEquals(sheet.maximum(), sheet.marks(), 1e-9, "a perfect reader earns every mark");
        assertTrue(sheet.maximum() >= 40, "at least four of the five are asked for, were " + sheet.maximum());
    }

    private static void flag(ExerciseViewModel exercise, EventVisibility sight) {
        exercise.flags().place(sight.places().get(0).shownMetres());
        String letter = exercise.flags().selectedDraft().orElseThrow().letter();
        if (sight.places().size() > 1) {
            exercise.flags().stretchSelected(sight.places().get(1).shownMetres());
        }
        exercise.flags().say(letter, sight.kind());
    }

    @Test
    void everyStepIsUndoneAndDoneAgainByName() {
        buildFiveEvents();
        Cable five = cable();
        assertEquals(
                "insert connector", bench().document().undoNameProperty().get().orElseThrow());
        for (int i = 0; i < 5; i++) {
            hands.type(KeyCode.Z, KeyCode.CONTROL);
        }
        assertEquals(List.of(), kinds());
        for (int i = 0; i < 5; i++) {
            hands.type(KeyCode.Y, KeyCode.CONTROL);
        }
        assertEquals(five, cable());
    }

    @Test
    void theMouseArmsAThingPutsItOnTheCableAndDragsItInOneStep() {
        openBench();
        hands.click(hands.find("#insert-pinch"));
        assertTrue(bench().events().armedProperty().get().isPresent());
        hands.clickOnCable(axis(), 40);
        assertEquals(List.of(EventKind.PINCH), kinds());
        double before = cable().events().get(0).startMetres();
        assertEquals(40, before, 0.2);
        hands.dragOnCable(axis(), 40, 70);
        assertEquals(70, cable().events().get(0).startMetres(), 0.3);
        hands.type(KeyCode.Z, KeyCode.CONTROL);
        assertEquals(before, cable().events().get(0).startMetres(), 1e-12, "the whole drag is one step");
    }

    @Test
    void whatCantBeIsSaidAtTheFieldAndTheLastGoodTraceStays() {
        openBench();
        hands.type(KeyCode.HOME);
        insertByKeys(5, KeyCode.P);
        TextField depth = (TextField) hands.find("#field-depthFraction");
        hands.run(() -> depth.setText("50"));
        assertEquals(0.5, ((Pinch) cable().events().get(0)).depthFraction(), 1e-12);
        Trace good = bench().trace().traceTrack().traceProperty().get();
        hands.run(() -> depth.setText("120"));
        Label fault = (Label) hands.find("#fault-depthFraction");
        assertTrue(fault.isVisible());
        assertEquals("Allowed is more than 0\u00a0%, up to 99\u00a0%.", fault.getText());
        assertSame(good, bench().trace().traceTrack().traceProperty().get());
        assertEquals(0.5, ((Pinch) cable().events().get(0)).depthFraction(), 1e-12);
        hands.run(() -> depth.setText("deep"));
        assertEquals("Write a number, in %.", fault.getText());
        hands.run(() -> depth.setText("60"));
        assertFalse(fault.isVisible());
        assertNotSame(good, bench().trace().traceTrack().traceProperty().get());
    }

    @Test
    void keysMoveCopyAndRenameWhatIsSelected() {
        openBench();
        hands.type(KeyCode.HOME);
        insertByKeys(5, KeyCode.T);
        double before = cable().events().get(0).startMetres();
        hands.type(KeyCode.RIGHT, KeyCode.ALT);
        assertTrue(cable().events().get(0).startMetres() > before);
        hands.type(KeyCode.D, KeyCode.CONTROL);
        assertEquals(List.of(EventKind.TAP, EventKind.TAP), kinds());
        assertNotEquals(cable().events().get(0).id(), cable().events().get(1).id());
        hands.type(KeyCode.F2);
        assertEquals("event-name", hands.focused().getId());
        hands.run(() -> ((TextField) hands.focused()).setText("tap-by-the-quay"));
        hands.type(KeyCode.ENTER);
        assertTrue(cable().event("tap-by-the-quay").isPresent());
        assertTrue(bench().document().now().record().shows("tap-by-the-quay"), "the drawing follows");
    }

    @Test
    void openingAnotherAsksNothingAndBringsBackWhatWasNotSaved() throws IOException {
        buildFiveEvents();
        BenchDocument built = bench().document().now();
        Path broken = Files.writeString(folder.resolve("broken.json"), "{");
        hands.run(() -> bench().files().open(broken));
        assertEquals(built, bench().document().now(), "what was open stays");
        assertTrue(bench().files().notices().get(0).text().startsWith("Not opened: "));
        hands.click(hands.find("#bench-notices .flat"));
        Path other = folder.resolve("other.json");
        BenchFile.save(other, BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT), BenchFile.Form.EXERCISE);
        hands.run(() -> bench().files().open(other));
        assertEquals(6, cable().events().size());
        assertNotEquals(built.lesson(), bench().document().now().lesson());
        hands.click(hands.find("#deed-bring-back"));
        assertEquals(built.lesson(), bench().document().now().lesson());
        assertTrue(bench().files().unsavedProperty().get());
    }

    @Test
    void everyControlTellsAScreenReaderWhatItIsAndIsLargeEnoughToRead() {
        buildFiveEvents();
        Readable.check(hands.root());
        hands.type(KeyCode.ESCAPE);
        Readable.check(hands.root());
        hands.type(KeyCode.A, KeyCode.CONTROL);
        Readable.check(hands.root());
        hands.run(() -> window.model().switchProjector());
        Readable.check(hands.root());
    }
}

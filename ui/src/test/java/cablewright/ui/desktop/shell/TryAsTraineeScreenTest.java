// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchFile;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.tabs.EditorTabs;
import cablewright.ui.desktop.bench.trial.TrialStack;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.TabPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** An instructor spoils a record, edits the exercise, saves it, opens it again, and tries it as a trainee. */
@ExtendWith(ApplicationExtension.class)
class TryAsTraineeScreenTest {

    private final DocumentViewModel document =
            new DocumentViewModel(BenchDocument.of(Examples.exercise("quay-3", Optional.empty())));
    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.METRES);
    private final TrialStack stack =
            new TrialStack(document::now, unit, Threads.sameThread(), Clock.systemUTC(), Locale.ROOT);
    private TabPane tabs;
    private EditorStage screen;

    @Start
    void start(Stage stage) {
        tabs = new TabPane();
        tabs.getTabs().setAll(EditorTabs.of(document, unit, Threads.sameThread(), stack::open, Locale.ROOT));
        stack.put(tabs);
        screen = new EditorStage(stage, stack, 1270);
    }

    private ExerciseViewModel tried() {
        return stack.trial().orElseThrow().model().current();
    }

    private void show(int tab) {
        screen.hands().run(() -> tabs.getSelectionModel().select(tab));
    }

    @Test
    void spoiltSavedReopenedAndSolved(@TempDir Path folder) throws Exception {
        screen.press("record-make");
        screen.choose("record-spoil", "record-spoil-left-out");
        show(1);
        screen.write("exercise-title", "Quay camera, drawn at the desk");
        Path file = folder.resolve("quay.json");
        BenchFile.save(file, document.now(), BenchFile.Form.EXERCISE);
        BenchFile again = BenchFile.open(file, Locale.ROOT);
        screen.hands().run(() -> document.open(again.document()));
        assertEquals("Quay camera, drawn at the desk", screen.text("exercise-title"));
        assertTrue(document.now().record().mayLie());

        screen.hands().run(() -> screen.hands().find("#trial-open").requestFocus());
        screen.hands().type(KeyCode.SPACE);
        assertEquals("trace-track", screen.hands().focused().getId());
        screen.hands().run(() -> answer(tried()));
        screen.hands().type(KeyCode.ENTER, KeyCode.CONTROL);
        assertEquals(Phase.COMMITTED, tried().phaseProperty().get());
        assertEquals(30, tried().sheetProperty().get().orElseThrow().marks(), 1e-9);
        assertTrue(screen.hands().find("#result").isVisible());

        screen.hands().type(KeyCode.ESCAPE);
        assertEquals(Optional.empty(), stack.trial());
        assertEquals("trial-open", screen.hands().focused().getId(), "work goes on where it was left");
    }

    /** What a perfect reader hands in; the splice that nobody drew belongs, since the record may lie. */
    private void answer(ExerciseViewModel exercise) {
        for (Flag flag : KeyedAnswer.of(exercise.exercise()).flags()) {
            exercise.settings().endProperty().set(flag.end());
            exercise.flags().place(flag.startMetres());
            flag.endMetres().ifPresent(exercise.flags()::stretchSelected);
            exercise.flags().say(flag.letter(), flag.kind());
            exercise.flags().judge(flag.letter(), flag.verdict());
        }
    }

    @Test
    void whatIsTriedIsACopyAndEndsWithTheView() {
        show(1);
        screen.press("trial-open");
        assertFalse(tabs.isVisible());
        screen.hands().type(KeyCode.F);
        screen.hands().run(() -> tried().flags().say("A", EventKind.PINCH));
        screen.hands().run(() -> tried().flags().judge("A", Verdict.DAMAGE));
        screen.press("trial-back");
        assertTrue(tabs.isVisible());
        assertEquals(Optional.empty(), document.undoNameProperty().get());
        screen.press("trial-open");
        assertTrue(tried().flags().draftsProperty().get().isEmpty());
    }

    @Test
    void anImpossibleExerciseCanNotBeReached() throws IOException {
        show(1);
        screen.write("exercise-title", "");
        screen.press("trial-open");
        assertEquals("Quay camera", tried().exercise().title());
    }

    @Test
    void everyControlHasWords() {
        show(1);
        screen.press("trial-open");
        Readable.check(screen.hands().root());
    }
}

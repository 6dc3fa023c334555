// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.work.WorkFolder;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.model.BenchStore;
import cablewright.ui.desktop.home.HomeStore;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.FlagDraft;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The lesson home in the real window: going on after a restart, progress that means something, twins of what was missed. */
@ExtendWith(ApplicationExtension.class)
class HomeScreenTest {

    private static final Lesson LESSON = BuiltInLessons.find("harbour-line").orElseThrow();

    private Path folder;
    private Stage stage;
    private DesktopWindow window;
    private Hands hands;

    @Start
    void start(Stage shown) throws IOException {
        folder = Files.createTempDirectory("cablewright-home");
        folder.toFile().deleteOnExit();
        stage = shown;
        // The stage is that of the test before, whose window would hear it close.
        stage.setScene(null);
        open();
        hands = new Hands(stage);
    }

    private void open() {
        HomeStore store = new HomeStore(WorkFolder.in(folder.resolve("work")), Optional.of(folder.resolve("lessons")));
        window = new DesktopWindow(
                stage,
                WindowMemory.none(),
                Threads.sameThread(),
                new ClassRecords(folder.resolve("records")),
                BenchStore.none(),
                store,
                Locale.ROOT);
        window.showHome();
    }

    /** As closing the window and starting the program again. */
    private void restart() {
        hands.run(() -> {
            stage.hide();
            stage.setScene(null);
            open();
        });
    }

    private ExerciseViewModel exercise() {
        return window.practice().current();
    }

    private void openLesson() {
        hands.run(((Button) hands.find("#lesson-" + LESSON.id()))::fire);
    }

    private String text(String selector) {
        return ((Labeled) hands.find(selector)).getText();
    }

    @Test
    void flagsThatWereNotHandedInAreThereAfterARestart() {
        assertEquals("go-on", hands.focused().getId(), "one key begins");
        hands.type(KeyCode.ENTER);
        assertEquals(BuiltInLessons.first().id(), window.practice().lesson().id());
        hands.type(KeyCode.H, KeyCode.CONTROL);
        openLesson();
        assertEquals(LESSON.exercises().get(0).id(), exercise().exercise().id());
        hands.run(() -> {
            exercise().flags().place(73.4);
            exercise().flags().say("A", EventKind.OPEN);
            exercise().flags().place(40);
        });
        List<FlagDraft> before = exercise().flags().draftsProperty().get();
        restart();
        assertEquals("go-on", hands.focused().getId());
        assertEquals(window.texts().say("home.where", 1, LESSON.exercises().size(), 2), text("#go-on-where"));
        hands.type(KeyCode.ENTER);
        assertEquals(before, exercise().flags().draftsProperty().get());
        hands.type(KeyCode.H, KeyCode.CONTROL);
        assertTrue(hands.find("#home").isVisible());
        openLesson();
        assertEquals(before, exercise().flags().draftsProperty().get(), "the mouse leads to the same place");
    }

    @Test
    void handingNothingInIsRecordedButSolvesNothingAndItsTwinIsOfWhatWasMissed() {
        openLesson();
        hands.run(exercise()::commit);
        assertEquals(0, exercise().sheetProperty().get().orElseThrow().marks(), 1e-9);
        String missed = exercise().exercise().id();
        hands.run(((Button) hands.find("#try-twin"))::fire);
        assertNotEquals(missed, exercise().exercise().id());
        assertTrue(exercise().exercise().cable().events().stream().anyMatch(event -> event.kind() == EventKind.OPEN));
        hands.run(exercise()::commit);
        List<AttemptRecord> kept =
                new ClassRecords(folder.resolve("records")).read().records();
        assertEquals(2, kept.size());
        assertEquals(List.of(EventKind.OPEN), kept.get(1).made().orElseThrow().damage());
        hands.run(((Button) hands.find("#try-again"))::fire);
        hands.run(exercise()::commit);
        assertEquals(
                2,
                new ClassRecords(folder.resolve("records")).read().records().size(),
                "another try is not recorded: the cable has been seen");
        hands.run(((Button) hands.find("#next-exercise"))::fire);
        assertEquals(LESSON.exercises().get(1).id(), exercise().exercise().id());
        restart();
        assertEquals(
                window.texts().say("home.count", 0, LESSON.exercises().size()),
                text("#lesson-" + LESSON.id() + " .lesson-state"),
                "0 of the marks is no tick");
    }

    @Test
    void anotherNameHasAnotherHome() {
        openLesson();
        hands.run(() -> exercise().flags().place(10));
        hands.type(KeyCode.H, KeyCode.CONTROL);
        hands.run(() -> {
            TextField name = (TextField) hands.find("#home-name");
            name.setText("Zoë");
            name.getOnAction().handle(null);
        });
        assertEquals("Zoë", window.model().traineeProperty().get());
        openLesson();
        assertEquals(List.of(), exercise().flags().draftsProperty().get());
    }

    @Test
    void tenMinutesAreARoundOfExercisesThatAreMade() {
        hands.click(hands.find("#today"));
        assertEquals("practice", window.practice().lesson().id());
        assertTrue(window.practice().hasNext());
    }
}

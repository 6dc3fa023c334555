// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.practice.PracticeSession.Mode;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Rounds of practice in the real window: chosen, answered, learnt from, kept, and shown in the class book. */
@ExtendWith(ApplicationExtension.class)
class AdaptiveRoundTest {

    private DesktopWindow window;
    private Hands hands;
    private ClassRecords records;

    @Start
    void start(Stage stage) throws IOException {
        Path folder = Files.createTempDirectory("cablewright-records");
        folder.toFile().deleteOnExit();
        records = new ClassRecords(folder);
        window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread(), records);
        window.show(Examples.lesson());
        hands = new Hands(stage);
    }

    private ExerciseViewModel exercise() {
        return window.practice().current();
    }

    private void choose(String menuId, int item) {
        MenuButton button = (MenuButton) hands.find("#practise");
        Menu menu = (Menu) button.getItems().stream()
                .filter(one -> menuId.equals(one.getId()))
                .findFirst()
                .orElseThrow();
        hands.run(() -> menu.getItems().get(item).fire());
    }

    /** Flags as a perfect reader does, or calls every first flag a splice. */
    private void flag(boolean mistaken) {
        Attempt perfect = KeyedAnswer.of(exercise().exercise());
        hands.run(() -> exercise().settings().use(perfect.settings()));
        boolean wrong = mistaken;
        for (Flag flag : perfect.flags()) {
            EventKind kind = wrong ? other(flag.kind()) : flag.kind();
            wrong = false;
            hands.run(() -> {
                exercise().flags().place(flag.startMetres());
                String letter = exercise().flags().selectedDraft().orElseThrow().letter();
                flag.endMetres().ifPresent(exercise().flags()::stretchSelected);
                exercise().flags().say(letter, kind);
                exercise().flags().judge(letter, flag.verdict());
            });
        }
    }

    private static EventKind other(EventKind kind) {
        return kind == EventKind.PARTIAL_SHORT ? EventKind.PINCH : EventKind.PARTIAL_SHORT;
    }

    @Test
    void roundIsChosenAnsweredKeptAndGoesOnToAnotherExercise() {
        choose("practise-on", 2);
        Exercise first = exercise().exercise();
        flag(false);
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        assertEquals(1, exercise().sheetProperty().get().orElseThrow().fraction(), 1e-9);
        List<AttemptRecord> kept = records.read().records();
        assertEquals(1, kept.size());
        assertEquals(first.id(), kept.get(0).exerciseId());
        assertEquals(
                List.of(ExerciseFamily.COAX_DROP),
                kept.get(0).made().orElseThrow().families());
        assertEquals("Trainee", kept.get(0).trainee());

        hands.click(hands.find("#next-exercise"));
        assertEquals(1, window.practice().indexProperty().get());
        assertNotEquals(first.id(), exercise().exercise().id());
        hands.type(KeyCode.DIGIT3, KeyCode.CONTROL);
        assertEquals(1, ((TableView<?>) hands.find("#attempts")).getItems().size());
    }

    @Test
    void mistakeIsExplainedPointedOutAndComparedWithWhatWasFlagged() {
        choose("practise-on", 2);
        flag(true);
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        Button look = (Button) hands.find("#look-0");
        assertTrue(exercise().traceTrack().lookHereProperty().get().isEmpty());
        hands.run(look::fire);
        assertTrue(exercise().traceTrack().lookHereProperty().get().size() >= 1);
        hands.run(look::fire);
        assertTrue(exercise().traceTrack().lookHereProperty().get().isEmpty());
        Button compare = (Button) hands.find("#compare-A");
        hands.run(compare::fire);
        assertNotNull(exercise().traceTrack().comparisonProperty().get());
        boolean told = hands.root().lookupAll(".finding-why").stream()
                .map(node -> ((Label) node).getText())
                .anyMatch(text -> text.contains("the trace goes"));
        assertTrue(told, "a reason from the trace is told");
    }

    @Test
    void timedRoundShowsWhatIsLeftOfItsTime() {
        choose("practise-timed", 0);
        Label left = (Label) hands.find("#time-left");
        assertTrue(left.getText().matches("(10:00|9:5\\d) left"), left.getText());
        assertTrue(window.practice().hasNext());
    }

    @Test
    void reviewSaysWhenNothingIsDue() {
        hands.run(() -> window.practise(new PractiseMenu.Wish(Mode.REVIEW, List.of(ExerciseFamily.values()))));
        Label notice = (Label) hands.find("#notice");
        assertTrue(notice.getText().startsWith("Nothing is due"), notice.getText());
        assertEquals("quay-3", exercise().exercise().id());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.exercise.ExercisePane;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The editor of an exercise, as an instructor uses it. */
@ExtendWith(ApplicationExtension.class)
class ExerciseEditorScreenTest {

    private final DocumentViewModel document =
            new DocumentViewModel(BenchDocument.of(Examples.exercise("quay-3", Optional.empty())));
    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.METRES);
    private final Queue<Runnable> work = new ArrayDeque<>();
    private EditorStage screen;

    @Start
    void start(Stage stage) {
        // Work waits until the test does it, so that it can be watched while it lasts.
        Threads threads = new Threads(work::add, Runnable::run);
        screen = new EditorStage(
                stage, new ExercisePane(document, unit, threads, () -> {}, EditorTexts.open(Locale.ROOT)), 380);
    }

    private Exercise exercise() {
        return document.now().exercise();
    }

    private void open(String section) {
        TitledPane pane = (TitledPane) screen.hands().find("#section-" + section);
        screen.hands().run(() -> pane.setExpanded(true));
    }

    private void doWork() {
        screen.hands().run(() -> {
            while (!work.isEmpty()) {
                work.remove().run();
            }
        });
    }

    @Test
    void titleBriefAndCautionsAreWritten() {
        screen.write("exercise-title", "The quay camera again");
        screen.write("exercise-brief", "It **tears** since Tuesday.");
        assertEquals("The quay camera again", exercise().title());
        assertEquals("It **tears** since Tuesday.", exercise().brief());
        String read = screen.hands().find("#exercise-brief-preview").getAccessibleText();
        assertTrue(read.contains("It tears since Tuesday."), read);
        CheckBox mains = (CheckBox) screen.hands().find("#caution-mains");
        screen.hands().run(mains::fire);
        assertEquals(
                List.of(Caution.LIVE_PLANT_POWER, Caution.MAINS, Caution.LOCAL_CODES),
                exercise().cautions());
        assertTrue(screen.hands().find("#caution-local-codes").isDisabled());
        screen.write("exercise-title", " ");
        assertTrue(screen.label("exercise-title-problem").startsWith("Title is \" \"; allowed is 1 to 200"));
        assertEquals("The quay camera again", exercise().title());
    }

    @Test
    void tabLeavesAFieldOfManyLines() {
        screen.hands().run(() -> screen.field("exercise-brief").requestFocus());
        screen.hands().type(KeyCode.TAB);
        assertFalse(screen.hands().focused() == screen.field("exercise-brief"));
        assertFalse(exercise().brief().contains("\t"));
    }

    @Test
    void choicesAreTypedAsLists() {
        open("permitted");
        assertEquals("5\u00a0ns, 20\u00a0ns", screen.text("permitted-pulses"));
        screen.write("permitted-pulses", "20, 5, 100 ns; 1 µs");
        assertEquals(
                List.of(
                        new HalfSine(5e-9),
                        new HalfSine(20e-9),
                        new HalfSine(100e-9),
                        new HalfSine(1e-6),
                        new RaisedCosineStep(2e-9)),
                exercise().permitted().stimuli());
        screen.write("permitted-steps", "");
        assertEquals(4, exercise().permitted().stimuli().size());
        screen.write("permitted-ranges", "150, 300");
        assertEquals(List.of(150.0, 300.0), exercise().permitted().rangesMetres());
        screen.write("permitted-averages", "64, many");
        assertEquals("\"many\" is not a whole number, such as 64", screen.label("permitted-averages-problem"));
        assertEquals(List.of(16, 64), exercise().permitted().averages());
        screen.write("permitted-gains", "6 parsec");
        assertTrue(screen.label("permitted-gains-problem").contains("parsec"));
        screen.write("permitted-gains", "100");
        assertTrue(
                screen.label("permitted-gains-problem").contains("0 to 80"), screen.label("permitted-gains-problem"));
        screen.pick("permitted-ends", List.of(LineEnd.NEAR));
        assertEquals(List.of(LineEnd.NEAR), exercise().permitted().ends());
    }

    @Test
    void rangesKeepTheirMetresWhileFeetAreShown() {
        open("permitted");
        screen.hands().run(() -> unit.set(LengthUnit.FEET));
        assertEquals("246.063\u00a0ft, 492.126\u00a0ft", screen.text("permitted-ranges"));
        screen.write("permitted-ranges", "246.063 ft, 492.126 ft, 1000 ft");
        assertEquals(List.of(75.0, 150.0, 304.8), exercise().permitted().rangesMetres());
    }

    @Test
    void velocityIsStatedOrLeftToBeFound() {
        open("permitted");
        screen.write("velocity-stated", "");
        assertEquals(OptionalDouble.empty(), exercise().permitted().velocity().statedFraction());
        screen.write("velocity-stated", "0.99");
        assertEquals("The stated velocity is 0.99; allowed is 0.7 to 0.95", screen.label("velocity-stated-problem"));
        screen.write("velocity-least", "0.9");
        assertEquals(0.9, exercise().start().settings().velocityFraction(), "the start follows");
    }

    @Test
    void startToleranceAndKnownEndAreSet() {
        open("start");
        screen.pick("start-range", 75.0);
        assertEquals(75, exercise().start().settings().rangeMetres());
        screen.write("start-velocity", "0.5");
        assertEquals("Out of range. Allowed is 0.7 to 0.95.", screen.label("start-velocity-problem"));
        screen.write("exercise-tolerance", "1.5");
        assertEquals(OptionalDouble.of(1.5), exercise().toleranceMetres());
        screen.write("exercise-tolerance", "");
        assertEquals(OptionalDouble.empty(), exercise().toleranceMetres());
        screen.hands().run(((CheckBox) screen.hands().find("#exercise-end-given"))::fire);
        assertFalse(exercise().endIsGiven());
    }

    @Test
    void hintsAreAddedOrderedAndTakenAway() {
        open("hints");
        screen.press("hint-add");
        screen.write("hint-text-2", "Try the **step**.");
        screen.write("hint-cost-2", "3.5");
        assertEquals(
                List.of(new Hint("Two edges belong together.", 2), new Hint("Try the **step**.", 3.5)),
                exercise().hints());
        screen.write("hint-cost-2", "101");
        assertEquals("Out of range. Allowed is 0 to 100.", screen.label("hint-cost-2-problem"));
        screen.press("hint-up-2");
        assertEquals(3.5, exercise().hints().get(0).costMarks());
        assertEquals("Try the **step**.", screen.text("hint-text-1"));
        screen.press("hint-remove-1");
        assertEquals(
                List.of(new Hint("Two edges belong together.", 2)), exercise().hints());
    }

    @Test
    void questionIsAskedChangedAndTakenBack() {
        open("question");
        screen.press("question-toggle");
        screen.write("question-text", "Where does the water begin?");
        screen.write("question-choice-text-1", "At 80 m");
        screen.write("question-choice-text-2", "At 101 m");
        screen.press("question-choice-add");
        CheckBox right = (CheckBox) screen.hands().find("#question-choice-right-2");
        screen.hands().run(right::fire);
        Prediction asked = exercise().prediction().orElseThrow();
        assertEquals("Where does the water begin?", asked.question());
        assertEquals(3, asked.choices().size());
        assertEquals(
                "At 101 m", asked.choice(asked.correctChoiceId()).orElseThrow().text());
        screen.press("question-reasons-toggle");
        screen.write("question-reason-text-1", "It lowers the impedance");
        assertEquals(
                "It lowers the impedance",
                exercise()
                        .prediction()
                        .orElseThrow()
                        .reasons()
                        .orElseThrow()
                        .choices()
                        .get(0)
                        .text());
        screen.press("question-choice-remove-2");
        assertEquals("At 80 m", rightAnswer(), "a right answer that goes is followed by another");
        screen.press("question-choice-remove-2");
        assertEquals(2, exercise().prediction().orElseThrow().choices().size(), "two answers stay");
        screen.write("question-text", "");
        assertTrue(screen.label("question-text-problem").startsWith("Question is"));
        screen.press("question-toggle");
        assertEquals(Optional.empty(), exercise().prediction());
    }

    private String rightAnswer() {
        Prediction asked = exercise().prediction().orElseThrow();
        return asked.choice(asked.correctChoiceId()).orElseThrow().text();
    }

    @Test
    void explanationIsDraftedOrCancelled() {
        open("explanation");
        screen.press("draft-make");
        assertTrue(screen.hands().find("#draft-cancel").isVisible());
        screen.press("draft-cancel");
        doWork();
        assertEquals("The pinch *dips* and recovers.", exercise().explanation(), "a cancelled draft changes nothing");
        screen.press("draft-make");
        doWork();
        assertTrue(exercise().explanation().contains("**"), exercise().explanation());
        assertEquals(exercise().explanation(), screen.text("exercise-explanation"));
        screen.hands().run(document::undo);
        assertEquals("The pinch *dips* and recovers.", screen.text("exercise-explanation"));
    }

    @Test
    void whatIsAskedIsWorkedOutWhileItIsLookedAt() {
        assertTrue(work.isEmpty());
        open("asked");
        assertTrue(screen.hands().find("#asked-working").isVisible());
        doWork();
        assertEquals("30 marks at most.", screen.label("asked-marks"));
        assertTrue(screen.label("asked-counts-S1").startsWith("Counts as belongs"));
        assertTrue(screen.label("asked-counts-P1").startsWith("Counts as damage"));
        assertTrue(screen.label("asked-flag-A").contains("splice, belongs"), screen.label("asked-flag-A"));
        assertTrue(
                screen.label("asked-difficulty").contains("3 events must be found, 2 of them damage"),
                screen.label("asked-difficulty"));
        screen.write("exercise-title", "Words change nothing");
        assertTrue(work.isEmpty());
        screen.hands()
                .run(() -> document.step(
                        "leave out",
                        now -> now.withRecord(it -> cablewright.lessons.bench.edit.RecordEdits.without(it, "S1"))));
        doWork();
        assertTrue(screen.label("asked-counts-S1").startsWith("Counts as damage: hardware missing from the record"));
        screen.press("asked-draw-S1");
        doWork();
        assertTrue(screen.label("asked-counts-S1").startsWith("Counts as belongs"));
    }

    @Test
    void everyControlHasWords() {
        for (String section : List.of("permitted", "start", "hints", "question", "explanation", "asked")) {
            open(section);
        }
        screen.press("question-toggle");
        doWork();
        assertEquals(List.of(), screen.unnamed());
        for (Node node : screen.hands().root().lookupAll(".text-area")) {
            assertFalse(node.getAccessibleText().isBlank());
        }
    }
}

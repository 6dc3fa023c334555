// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.marking.MarkSheet;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Practice in the real window: by keyboard alone, by mouse alone, light and dark, near and far. */
@ExtendWith(ApplicationExtension.class)
class PracticeScreenTest {

    private static final int MOST_KEYS = 60;

    private DesktopWindow window;
    private Hands hands;

    @Start
    void start(Stage stage) {
        window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread());
        window.show(Examples.lesson());
        hands = new Hands(stage);
    }

    private ExerciseViewModel exercise() {
        return window.practice().current();
    }

    private double cursor() {
        return exercise().axis().cursorMetresProperty().get();
    }

    private void walkCursorTo(double metres) {
        hands.type(KeyCode.HOME);
        for (int i = 0; i < MOST_KEYS && cursor() + 7.7 < metres; i++) {
            hands.type(KeyCode.RIGHT, KeyCode.CONTROL);
        }
        for (int i = 0; i < MOST_KEYS && cursor() + 0.2 < metres; i++) {
            hands.type(KeyCode.RIGHT);
        }
        assertEquals(metres, cursor(), 0.4);
    }

    private Optional<EventKind> kind() {
        return exercise().flags().selectedDraft().orElseThrow().kind();
    }

    private void flagByKeys(double metres, KeyCode firstLetter, EventKind kind) {
        walkCursorTo(metres);
        hands.type(KeyCode.F);
        hands.type(KeyCode.K);
        for (int i = 0; i < MOST_KEYS && !kind().equals(Optional.of(kind)); i++) {
            hands.type(firstLetter);
        }
        hands.type(KeyCode.ENTER);
        assertEquals(Optional.of(kind), kind());
    }

    @Test
    void anExerciseIsSolvedByKeyboardAlone() {
        flagByKeys(31.4, KeyCode.S, EventKind.SPLICE);
        flagByKeys(84.1, KeyCode.P, EventKind.PINCH);
        flagByKeys(101.4, KeyCode.W, EventKind.WATER);
        walkCursorTo(106.1);
        hands.type(KeyCode.W);
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);

        MarkSheet sheet = exercise().sheetProperty().get().orElseThrow();
        assertEquals(30, sheet.marks(), 1e-9);
        assertEquals(30, sheet.maximum(), 1e-9);
        assertTrue(hands.find("#result").isVisible());

        hands.type(KeyCode.ENTER);
        assertEquals(1, window.practice().indexProperty().get(), "Enter goes on to the next exercise");
        assertEquals(Phase.ASKED, exercise().phaseProperty().get());
        boolean isFirst = "choice-down".equals(hands.focused().getId());
        hands.type(isFirst ? KeyCode.SPACE : KeyCode.DOWN);
        hands.type(KeyCode.TAB);
        hands.type(KeyCode.SPACE);
        hands.type(KeyCode.TAB);
        hands.type(KeyCode.ENTER);
        assertEquals(Phase.READING, exercise().phaseProperty().get());
        assertEquals("down", exercise().chosenProperty().get().orElseThrow());
    }

    @Test
    void anExerciseIsSolvedByMouseAlone() {
        flagByMouse("A", 31.4, EventKind.SPLICE);
        flagByMouse("B", 80.0, EventKind.PINCH);
        hands.dragOnTrace(exercise().axis(), 80.0, 84.1);
        hands.click(hands.find("#commit"));
        MarkSheet sheet = exercise().sheetProperty().get().orElseThrow();
        assertEquals(20, sheet.marks(), 1e-9, "splice and pinch; the water was left out");
        assertEquals(1, sheet.damageMissed());
        hands.click(hands.find("#next-exercise"));
        hands.click(hands.find("#choice-up"));
        assertTrue(hands.find("#answer").isDisabled(), "a reason belongs to the answer");
        hands.click(hands.find("#reason-nearer"));
        hands.click(hands.find("#answer"));
        assertEquals(Phase.READING, exercise().phaseProperty().get());
    }

    private void flagByMouse(String letter, double metres, EventKind kind) {
        hands.doubleClickOnTrace(exercise().axis(), metres);
        ComboBox<?> box = (ComboBox<?>) hands.find("#flag-kind-" + letter);
        hands.click(box);
        ListView<?> list = (ListView<?>) ((ComboBoxListViewSkin<?>) box.getSkin()).getPopupContent();
        hands.run(() -> list.scrollTo(list.getItems().indexOf(kind)));
        Node cell = list.lookupAll(".list-cell").stream()
                .filter(it -> kind.equals(((ListCell<?>) it).getItem()))
                .findFirst()
                .orElseThrow();
        hands.click(cell);
        assertEquals(Optional.of(kind), kind());
    }

    @Test
    void settingsAreChangedByTheirKeysAndTheOldTraceStaysUntilTheNewOneIsThere() {
        hands.type(KeyCode.G);
        assertEquals(0, exercise().traceTrack().traceProperty().get().settings().gainDecibels(), 0);
        hands.type(KeyCode.G, KeyCode.SHIFT);
        hands.type(KeyCode.P);
        assertEquals(20e-9, exercise().settings().stimulusProperty().get().widthSeconds(), 1e-12);
        hands.type(KeyCode.V);
        assertEquals(0.855, exercise().settings().velocityProperty().get(), 1e-9);
    }

    @Test
    void workBeginsOnTheTraceAlsoAfterAnotherLessonWasOpened() {
        assertEquals("trace-track", hands.focused().getId());
        hands.run(() -> window.show(Examples.lesson()));
        assertEquals("trace-track", hands.focused().getId());
    }

    @Test
    void zoomKeysZoomAboutTheCursorAndNoughtShowsAll() {
        walkCursorTo(84.1);
        double cursorBefore = exercise().axis().viewProperty().get().pixel(cursor());
        hands.type(KeyCode.PLUS);
        assertTrue(exercise().axis().isZoomed());
        assertEquals(cursorBefore, exercise().axis().viewProperty().get().pixel(cursor()), 1e-6);
        hands.type(KeyCode.DIGIT0);
        assertFalse(exercise().axis().isZoomed());
    }

    @Test
    void everyControlTellsAScreenReaderWhatItIsAndIsLargeEnoughToRead() {
        Readable.check(hands.root());
        hands.type(KeyCode.F);
        hands.type(KeyCode.H);
        Readable.check(hands.root());
        hands.type(KeyCode.DELETE);
        hands.type(KeyCode.F1);
        Readable.check(hands.root());
        hands.type(KeyCode.ESCAPE);
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        assertEquals(Phase.READING, exercise().phaseProperty().get(), "without a flag it asks first");
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        assertEquals(Phase.COMMITTED, exercise().phaseProperty().get());
        Readable.check(hands.root());
        hands.type(KeyCode.ENTER);
        Readable.check(hands.root());
    }

    @Test
    void lightAndDarkDifferAndBothShowTheTrace() {
        double light = brightness(hands.picture());
        hands.click(hands.find("#dark"));
        double dark = brightness(hands.picture());
        assertTrue(light > 0.8, "light page, was " + light);
        assertTrue(dark < 0.35, "dark page, was " + dark);
    }

    private static double brightness(WritableImage picture) {
        double sum = 0;
        int count = 0;
        for (int y = 0; y < picture.getHeight(); y += 7) {
            for (int x = 0; x < picture.getWidth(); x += 7) {
                Color colour = picture.getPixelReader().getColor(x, y);
                sum += (colour.getRed() + colour.getGreen() + colour.getBlue()) / 3;
                count++;
            }
        }
        return sum / count;
    }

    @Test
    void aBrokenFileIsToldInWordsAndWhatWasOpenStays(@TempDir Path folder) throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{ \"format\": \"cablewright-lesson\", ");
        hands.run(() -> window.open(broken));
        Label notice = (Label) hands.find("#notice");
        assertTrue(notice.getParent().isVisible());
        assertTrue(notice.getText().contains("broken.json"), notice.getText());
        assertEquals("examples", window.practice().lesson().id());
        hands.click(hands.find("#notice-close"));
        assertFalse(notice.getParent().isVisible());
    }

    @Test
    void aLessonIsOpenedFromItsFile(@TempDir Path folder) throws IOException {
        Document document = new Document.OfLesson(Examples.lesson());
        Path file = Files.write(folder.resolve("lesson.json"), new DocumentWriter().bytes(document));
        hands.type(KeyCode.F);
        hands.run(() -> window.open(file));
        assertEquals(Examples.lesson(), window.practice().lesson());
        assertEquals(1, exercise().flags().draftsProperty().get().size(), "what was begun of this lesson is kept");
    }

    @Test
    void projectorAndFeetKeepWhatWasDone() {
        hands.type(KeyCode.F);
        hands.click(hands.find("#projector"));
        hands.click(hands.find("#unit"));
        assertEquals(LengthUnit.FEET, exercise().axis().unitProperty().get());
        assertEquals(1, exercise().flags().draftsProperty().get().size());
        assertNotEquals(null, hands.find("#flag-A"));
    }
}

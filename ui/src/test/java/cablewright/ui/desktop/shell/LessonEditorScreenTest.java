// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.Picture;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.bench.lesson.LessonPane;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.PictureFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.ListView;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The editor of a lesson, as an instructor uses it. */
@ExtendWith(ApplicationExtension.class)
class LessonEditorScreenTest {

    private final DocumentViewModel document = new DocumentViewModel(new BenchDocument(Examples.lesson(), 0));
    private LessonPane pane;
    private EditorStage screen;

    @Start
    void start(Stage stage) {
        pane = new LessonPane(document, Threads.sameThread(), EditorTexts.open(Locale.ROOT));
        screen = new EditorStage(stage, pane, 400);
    }

    private Lesson lesson() {
        return document.now().lesson();
    }

    private List<String> order() {
        return lesson().exercises().stream().map(Exercise::id).toList();
    }

    private ListView<?> list() {
        return (ListView<?>) screen.hands().find("#lesson-exercises");
    }

    private void openPages() {
        TitledPane pages = (TitledPane) screen.hands().find("#section-pages");
        screen.hands().run(() -> pages.setExpanded(true));
    }

    private LessonPage page(int number) {
        return lesson().pages().get(number);
    }

    @Test
    void exercisesAreOrderedByKeysAndButtons() {
        screen.hands().run(() -> list().requestFocus());
        screen.hands().type(KeyCode.DOWN, KeyCode.ALT);
        assertEquals(List.of("quay-4", "quay-3"), order());
        assertEquals(1, document.now().index(), "what is worked on stays");
        screen.press("lesson-up");
        assertEquals(List.of("quay-3", "quay-4"), order());
        screen.hands().type(KeyCode.DOWN);
        assertEquals(1, document.now().index(), "an arrow alone takes up the next exercise");
    }

    @Test
    void exercisesAreAddedCopiedNamedAndTakenAway() {
        screen.press("lesson-duplicate");
        assertEquals(List.of("quay-3", "quay-2", "quay-4"), order());
        screen.write("lesson-exercise-id", "quay-copy");
        assertEquals(List.of("quay-3", "quay-copy", "quay-4"), order());
        screen.write("lesson-exercise-id", "quay 4");
        assertTrue(screen.label("lesson-exercise-id-problem").contains("letters, digits"));
        screen.write("lesson-exercise-id", "quay-4");
        assertTrue(screen.label("lesson-exercise-id-problem").contains("twice"));
        screen.choose("lesson-add", "lesson-add-building-riser");
        assertEquals("custom-house-riser", order().get(2));
        screen.hands().run(() -> list().requestFocus());
        screen.hands().type(KeyCode.DELETE);
        screen.press("lesson-remove");
        screen.press("lesson-remove");
        assertEquals(1, order().size());
        screen.press("lesson-remove");
        assertEquals(1, order().size(), "the last one stays");
        screen.hands().run(document::undo);
        assertEquals(2, order().size());
    }

    @Test
    void lessonIsToldAndItsPassMarkHasLimits() {
        screen.write("lesson-title", "On the quay");
        screen.write("lesson-id", "on-the-quay");
        screen.write("lesson-introduction", "Three **lines**.");
        screen.write("lesson-world", "All invented.");
        screen.write("lesson-pass-mark", "65");
        assertEquals("On the quay", lesson().title());
        assertEquals("on-the-quay", lesson().id());
        assertEquals("Three **lines**.", lesson().introduction());
        assertEquals(0.65, lesson().passMarkFraction(), 1e-12);
        screen.write("lesson-pass-mark", "120");
        assertEquals("Out of range. Allowed is 0 to 100\u00a0%.", screen.label("lesson-pass-mark-problem"));
        assertEquals(0.65, lesson().passMarkFraction(), 1e-12);
        String read = screen.hands().find("#lesson-introduction-preview").getAccessibleText();
        assertTrue(read.contains("Three lines."), read);
    }

    @Test
    void pagesArePutBetweenExercisesWithPicturesAndAQuestion(@TempDir Path folder) throws IOException {
        openPages();
        screen.press("page-add");
        screen.write("page-title-1", "What a splice does");
        screen.write("page-text-1", "It goes **up**, then back.");
        byte[] png = PictureFormat.PNG.draw(20, 10, "A splice", pen -> pen.fill(0, 0, 20, 10, Colour.of(0x0072B2)));
        Path file = Files.write(folder.resolve("splice.png"), png);
        screen.hands().run(() -> pane.addPicture(0, file));
        assertArrayEquals(png, page(0).pictures().get(0).bytes());
        screen.write("page-1-picture-caption-1", "A splice, cut open");
        assertEquals("A splice, cut open", page(0).pictures().get(0).caption());
        screen.press("page-question-1-toggle");
        screen.write("page-question-1-text", "Up or down?");
        assertEquals("Up or down?", page(0).prediction().orElseThrow().question());
        assertEquals("Before exercise 1, Quay camera", screen.label("page-place-1"));
        screen.press("page-down-1");
        assertEquals(1, page(0).exercisesBefore());
        screen.press("page-down-1");
        assertEquals("At the end", screen.label("page-place-1"));
        screen.press("page-remove-1");
        assertEquals(List.of(), lesson().pages());
    }

    @Test
    void filesThatAreNoPicturesAreToldAndChangeNothing(@TempDir Path folder) throws IOException {
        openPages();
        screen.press("page-add");
        Path words = Files.writeString(folder.resolve("words.png"), "not a picture");
        screen.hands().run(() -> pane.addPicture(0, words));
        assertEquals(
                "words.png is not a PNG or JPEG picture. Save it as one of these.",
                screen.label("page-picture-problem-1"));
        Path large = Files.write(folder.resolve("large.png"), new byte[Picture.MOST_BYTES + 1]);
        screen.hands().run(() -> pane.addPicture(0, large));
        assertTrue(screen.label("page-picture-problem-1").contains("1000001 bytes"));
        assertEquals(List.of(), page(0).pictures());
    }

    @Test
    void everyControlHasWords() {
        openPages();
        screen.press("page-add");
        assertEquals(List.of(), screen.unnamed());
        assertTrue(list().getAccessibleText().contains("Alt and an arrow"));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.Picture;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.PictureFormat;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Pages between exercises in Practice: predict, see, read why, go on. */
@ExtendWith(ApplicationExtension.class)
class LessonPagesScreenTest {

    private static final byte[] PICTURE =
            PictureFormat.PNG.draw(60, 30, "A splice", pen -> pen.fill(0, 0, 60, 30, Colour.of(0x0072B2)));

    private DesktopWindow window;
    private Hands hands;

    @Start
    void start(Stage stage) {
        window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread());
        window.show(lesson());
        hands = new Hands(stage);
    }

    private static Lesson lesson() {
        Lesson plain = Examples.lesson();
        Prediction question = new Prediction(
                "Up or down?",
                List.of(new Choice("up", "Up", "Yes, it is more than the cable."), new Choice("down", "Down", "No.")),
                "up",
                "A splice adds inductance.");
        List<LessonPage> pages = List.of(
                new LessonPage(
                        "splices",
                        0,
                        "What a splice shows",
                        "It goes **up**.",
                        List.of(Picture.of("A splice, cut open", PICTURE)),
                        Optional.of(question)),
                new LessonPage("next", 0, "And now", "Read the quay's camera line.", List.of(), Optional.empty()),
                new LessonPage("end", 2, "What you saw", "Three kinds of damage.", List.of(), Optional.empty()));
        return new Lesson(
                plain.id(),
                plain.title(),
                plain.introduction(),
                plain.worldNote(),
                plain.passMarkFraction(),
                plain.exercises(),
                pages);
    }

    private ExerciseViewModel exercise() {
        return window.practice().current();
    }

    private List<String> spoken() {
        return ((Parent) hands.find("#lesson-page"))
                .lookupAll(".markdown").stream().map(Node::getAccessibleText).toList();
    }

    @Test
    void predictObserveExplainByKeyboardThenTheTrace() {
        assertEquals("page-choice-up", hands.focused().getId());
        assertEquals(List.of("Up or down?"), spoken(), "nothing is shown before the answer");
        assertTrue(exercise().traceTrack().traceProperty().get() == null, "nor is the trace taken");
        hands.type(KeyCode.SPACE);
        hands.type(KeyCode.TAB);
        hands.type(KeyCode.SPACE);
        assertTrue(spoken().containsAll(
                        List.of("It goes up.", "Yes, it is more than the cable.", "A splice adds inductance.")));
        ImageView picture = (ImageView) hands.find(".lesson-picture");
        assertEquals("A splice, cut open", picture.getAccessibleText());
        assertTrue(picture.getLayoutBounds().getWidth() > 30);
        assertEquals("page-on", hands.focused().getId());
        hands.type(KeyCode.ENTER);
        assertEquals("And now", ((Label) hands.find("#lesson-page .card-title")).getText());
        hands.type(KeyCode.ENTER);
        assertNull(hands.root().lookup("#lesson-page"));
        assertEquals("trace-track", hands.focused().getId());
        assertFalse(exercise().traceTrack().traceProperty().get() == null);
    }

    @Test
    void endOfTheLessonIsAPageOfItsOwnAndPagesCanBeReadAgain() {
        hands.run(() -> window.practice().select(1));
        assertNull(hands.root().lookup("#lesson-page"), "no page lies before the second exercise");
        assertTrue(window.practice().hasNext());
        hands.run(() -> window.practice().next());
        assertEquals("What you saw", ((Label) hands.find("#lesson-page .card-title")).getText());
        hands.click(hands.find("#page-on"));
        assertFalse(window.practice().hasNext());
        hands.run(() -> window.practice().showAgain(lesson().pages().get(1)));
        assertEquals("And now", ((Label) hands.find("#lesson-page .card-title")).getText());
        hands.click(hands.find("#page-on"));
        assertEquals(1, window.practice().indexProperty().get(), "and back to where one was");
    }

    @Test
    void everyControlHasWords() {
        for (String id : List.of("page-choice-up", "page-choice-down", "page-answer")) {
            assertFalse(hands.find("#" + id).getAccessibleText().isBlank(), id);
        }
        assertFalse(hands.find("#lesson-page .scroll-pane").getAccessibleText().isBlank());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.ui.desktop.task.Threads;
import javafx.scene.Node;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Pages of the first lesson: figures that answer to their sliders, and a worked example step by step. */
@ExtendWith(ApplicationExtension.class)
class LiveFigureScreenTest {

    private DesktopWindow window;
    private Hands hands;

    @Start
    void start(Stage stage) {
        window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread());
        window.show(BuiltInLessons.find("pulses").orElseThrow());
        hands = new Hands(stage);
    }

    private String spoken(String figure) {
        Node surface = hands.root().lookup("#figure-" + figure + " .figure-view");
        return surface.getAccessibleText();
    }

    private void answer(String choice) {
        hands.run(() -> ((javafx.scene.control.RadioButton) hands.find("#page-choice-" + choice)).setSelected(true));
        hands.run(() -> ((javafx.scene.control.Button) hands.find("#page-answer")).fire());
    }

    @Test
    void theEchoWalksWithTheVelocityThatIsSet() {
        answer("800");
        assertTrue(spoken("open-end").contains("at 10"), () -> spoken("open-end"));
        hands.type(KeyCode.ENTER);
        answer("100");
        String before = spoken("velocity-figure");
        Slider slider = (Slider) hands.find("#figure-slider-velocity-figure");
        assertEquals("Velocity that is set", slider.getAccessibleText());
        hands.run(() -> slider.setValue(0));
        String after = spoken("velocity-figure");
        assertNotEquals(before, after);
        // 100 m × 0.60 ÷ 0.85, and the top of the pulse a metre or two behind its edge.
        assertTrue(after.contains("60\u00a0%") && after.contains("at 7"), after);
    }

    @Test
    void aWorkedExampleIsAnsweredStepByStep() {
        answer("800");
        hands.type(KeyCode.ENTER);
        answer("100");
        hands.type(KeyCode.ENTER);
        assertNull(hands.root().lookup("#step-2"), "the second step waits for the first");
        hands.run(() -> ((javafx.scene.control.Button) hands.find("#step-1")).fire());
        assertTrue(hands.find("#step-2").isFocused());
    }

    @Test
    void instructorsNotesAreOnNoScreenOfATrainee() {
        answer("800");
        String notes = BuiltInLessons.find("pulses")
                .orElseThrow()
                .plan()
                .orElseThrow()
                .instructor()
                .orElseThrow()
                .misreadings()
                .get(0)
                .claim();
        assertTrue(hands.root().lookupAll(".markdown").stream()
                .map(Node::getAccessibleText)
                .noneMatch(text -> text != null && text.contains(notes)));
    }
}

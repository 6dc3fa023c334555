// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.desktop.task.Threads;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** From Practice to Demonstrations and back, in the real window. */
@ExtendWith(ApplicationExtension.class)
class PagesTest {

    private Hands hands;

    @Start
    void start(Stage stage) {
        DesktopWindow window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread());
        window.show(Examples.lesson());
        hands = new Hands(stage);
    }

    @Test
    void keysBringDemonstrationsAndPracticeBackAsItWas() {
        Node practice = hands.find(".exercise");
        hands.type(KeyCode.DIGIT2, KeyCode.CONTROL);
        hands.find(".demonstration-list");
        assertNull(hands.root().lookup(".exercise"));
        assertTrue(((ToggleButton) hands.find("#page-demonstrations")).isSelected());
        hands.type(KeyCode.DIGIT1, KeyCode.CONTROL);
        assertSame(practice, hands.find(".exercise"));
    }

    @Test
    void answerAndFigureAreStillThereAfterALookAtPractice() {
        hands.type(KeyCode.DIGIT2, KeyCode.CONTROL);
        hands.click(hands.find("#answer-2"));
        hands.click(hands.find("#answer"));
        Node caption = hands.find("#caption");
        hands.click(hands.find("#page-practice"));
        hands.click(hands.find("#page-demonstrations"));
        assertSame(caption, hands.find("#caption"));
        hands.type(KeyCode.F1);
        hands.find("#help");
        hands.type(KeyCode.ESCAPE);
        assertNull(hands.root().lookup("#help"));
    }
}

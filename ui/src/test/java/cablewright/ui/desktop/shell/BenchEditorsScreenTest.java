// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.ClassRecords;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The editors where they belong: beside the tracks of the Bench, in the real window. */
@ExtendWith(ApplicationExtension.class)
class BenchEditorsScreenTest {

    private final ClassRecords records = ClassRecords.inMemory();
    private Hands hands;

    @Start
    void start(Stage stage) {
        DesktopWindow window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread(), records);
        window.show(Examples.lesson());
        hands = new Hands(stage);
    }

    private void show(String tab) {
        TabPane tabs = (TabPane) hands.find("#bench-tabs");
        hands.run(() -> tabs.getSelectionModel()
                .select(tabs.getTabs().stream()
                        .filter(it -> it.getId().equals("tab-" + tab))
                        .findFirst()
                        .orElseThrow()));
    }

    @Test
    void recordIsEditedBesideTheTracksAndUndoneInTheBar() {
        hands.type(KeyCode.DIGIT4, KeyCode.CONTROL);
        show("record");
        hands.run(() -> ((CheckBox) hands.find("#record-may-lie")).fire());
        assertTrue(((Button) hands.find("#bench-undo")).getText().contains("may be wrong"));
        hands.run(() -> ((TextField) hands.find("#record-length")).setText("140"));
        assertTrue(((Label) hands.find("#record-length-difference")).getText().contains("100.0"));
        assertTrue(
                hands.find("#record-track").getAccessibleText().contains("140.0"),
                hands.find("#record-track").getAccessibleText());
        hands.click(hands.find("#bench-undo"));
        assertEquals("100", ((TextField) hands.find("#record-length")).getText());
    }

    @Test
    void exerciseIsTriedWithoutLeavingAndNothingIsKept() throws IOException {
        hands.type(KeyCode.DIGIT4, KeyCode.CONTROL);
        hands.type(KeyCode.T, KeyCode.CONTROL);
        Node trial = hands.find("#trial");
        assertTrue(trial.isVisible());
        hands.type(KeyCode.F);
        hands.type(KeyCode.DELETE);
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        // There is no flag: it asks, and is told again.
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        assertTrue(hands.find("#result").isVisible());
        assertEquals(0, records.read().records().size(), "the attempt goes into no log");
        hands.type(KeyCode.DIGIT1, KeyCode.CONTROL);
        hands.type(KeyCode.DIGIT4, KeyCode.CONTROL);
        assertTrue(hands.find("#trial").isVisible(), "it stays while another page is looked at");
        hands.type(KeyCode.ESCAPE);
        assertNull(hands.root().lookup("#trial"));
        assertFalse(hands.find("#bench-tabs").getAccessibleText().isBlank());
    }

    @Test
    void everyControlOfEveryEditorHasWords() {
        hands.type(KeyCode.DIGIT4, KeyCode.CONTROL);
        for (String tab : new String[] {"record", "exercise", "lesson"}) {
            show(tab);
            Readable.check(hands.root());
        }
    }
}

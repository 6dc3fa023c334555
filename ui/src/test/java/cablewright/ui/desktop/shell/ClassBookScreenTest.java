// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.classbook.Outcome;
import cablewright.lessons.classbook.TraineeLog;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The class book in the real window: it shows what an instructor brought in. */
@ExtendWith(ApplicationExtension.class)
class ClassBookScreenTest {

    private Hands hands;
    private ClassRecords records;

    @Start
    void start(Stage stage) throws IOException {
        Path folder = Files.createTempDirectory("cablewright-class");
        Path logs = Files.createDirectory(folder.resolve("brought"));
        new TraineeLog(logs.resolve("ada.jsonl")).append(record("Ada", EventKind.PINCH, 10, 0, 0));
        new TraineeLog(logs.resolve("ada.jsonl")).append(record("Ada", EventKind.PINCH, 9, 0, 1));
        new TraineeLog(logs.resolve("ben.jsonl")).append(record("Ben", EventKind.SPLICE, 4, 2, 2));
        records = new ClassRecords(folder.resolve("store"));
        records.takeOver(List.of(logs));
        DesktopWindow window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread(), records);
        window.show(Examples.lesson());
        hands = new Hands(stage);
    }

    private static AttemptRecord record(String trainee, EventKind taken, double marks, int digs, int minute) {
        Outcome outcome = new Outcome(
                EventKind.PINCH,
                Verdict.DAMAGE,
                Optional.of(taken),
                Optional.of(Verdict.DAMAGE),
                OptionalDouble.of(0.4 - 0.3 * minute),
                marks);
        return new AttemptRecord(
                trainee,
                "harbour-line",
                "quay-camera-3",
                Instant.parse("2031-03-01T08:00:00Z").plusSeconds(60L * minute),
                OptionalDouble.of(95),
                marks,
                10,
                0,
                digs,
                0,
                0,
                List.of(outcome),
                List.of(),
                Optional.empty());
    }

    private String figure(String key) {
        return hands.find("#figure-" + key).getAccessibleText();
    }

    @Test
    void showsEveryAttemptThatWasBroughtInAndWhatTheyShowTogether() {
        hands.type(KeyCode.DIGIT3, KeyCode.CONTROL);
        assertEquals(3, ((TableView<?>) hands.find("#attempts")).getItems().size());
        assertEquals("3 attempts", figure("attempts"));
        assertEquals("77 % of the marks", figure("marks"));
        assertEquals("2 needless digs", figure("digs"));
        assertEquals("1:35 median time", figure("time"));
        boolean confusion = hands.find("#taken-for").lookupAll(".grid-cell").stream()
                .map(node -> ((Label) node).getAccessibleText())
                .anyMatch("pinch taken for splice: once"::equals);
        assertTrue(confusion, "the grid tells what was taken for what");
        assertTrue(hands.find("#place-errors").getAccessibleText().startsWith("3 places flagged"));
    }

    @Test
    @SuppressWarnings("unchecked")
    void showsOneTraineeAlone() {
        hands.type(KeyCode.DIGIT3, KeyCode.CONTROL);
        ComboBox<Optional<String>> whose = (ComboBox<Optional<String>>) hands.find("#whose");
        hands.run(() -> whose.setValue(Optional.of("Ada")));
        assertEquals(2, ((TableView<?>) hands.find("#attempts")).getItems().size());
        assertEquals("95 % of the marks", figure("marks"));
        hands.run(() -> whose.setValue(Optional.empty()));
        assertEquals("3 attempts", figure("attempts"));
    }

    @Test
    void everyControlHasWords() {
        hands.type(KeyCode.DIGIT3, KeyCode.CONTROL);
        Readable.check(hands.root());
    }
}

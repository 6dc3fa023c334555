// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.exam.sitting.SittingItemViewModel;
import cablewright.ui.desktop.exam.sitting.SittingView;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** An exam in the real window: from a key over a sealed paper and three sittings to the class report. */
@ExtendWith(ApplicationExtension.class)
class ExamScreenTest {

    private final Exercise exercise = Examples.exercise("quay-3", Optional.empty());
    private Hands hands;
    private Path folder;
    private ClassRecords records;

    @Start
    void start(Stage stage) throws IOException {
        folder = Files.createTempDirectory("cablewright-exam");
        records = ClassRecords.inMemory();
        DesktopWindow window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread(), records);
        window.show(new Lesson("quay", "Quay", "One line.", "All of it is invented.", 0.5, List.of(exercise)));
        hands = new Hands(stage);
        stage.setOnHidden(event -> {});
    }

    private void open(String page) {
        press("#exam-page-" + page);
    }

    private void press(String selector) {
        ButtonBase button = (ButtonBase) hands.find(selector);
        assertFalse(button.isDisabled(), selector + " can't be pressed");
        hands.run(button::fire);
    }

    private void write(String selector, String text) {
        TextInputControl field = (TextInputControl) hands.find(selector);
        hands.run(() -> field.setText(text));
    }

    private String said(String selector) {
        return ((Label) hands.find(selector)).getText();
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private SittingItemViewModel line() {
        return ((SittingView) hands.find("#sitting")).model().current();
    }

    private void makeKeyAndPaper() {
        hands.type(KeyCode.DIGIT3, KeyCode.CONTROL);
        open("keys");
        Readable.check(hands.root());
        write("#key-file", file("examiner.key"));
        press("#key-make");
        assertTrue(said("#key-message").contains("Back it up now"), said("#key-message"));
        assertTrue(((TextField) hands.find("#key-public")).getText().startsWith("age1"));
        open("seal");
        Readable.check(hands.root());
        write("#seal-minutes", "30");
        write("#seal-target", file("paper.json"));
        press("#seal-paper");
        assertTrue(said("#seal-message").contains("paper.json"), said("#seal-message"));
    }

    private void begin(String name) {
        open("sit");
        write("#start-paper", file("paper.json"));
        write("#start-name", name);
        press("#start-open");
        press("#start-begin");
    }

    private void handIn() {
        press("#sitting-hand-in");
        press("#hand-in-sure");
    }

    /** Flags an event as a trainee does: a double click on the trace, a kind, a verdict. */
    @SuppressWarnings("unchecked")
    private void flag(String letter, double metres, EventKind kind, Verdict verdict) {
        hands.doubleClickOnTrace(line().axis(), metres);
        ComboBox<EventKind> kinds = (ComboBox<EventKind>) hands.find("#flag-kind-" + letter);
        hands.run(() -> kinds.setValue(kind));
        RadioButton button =
                (RadioButton) hands.find("#flag-" + (verdict == Verdict.DAMAGE ? "damage" : "belongs") + "-" + letter);
        hands.run(button::fire);
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aPaperGoesFromSealingOverThreeSittingsToTheClassReport() throws IOException {
        makeKeyAndPaper();

        begin("Ada Quay");
        Readable.check(hands.root());
        assertTrue(said("#sitting-clock").endsWith(" left"), said("#sitting-clock"));
        char letter = 'A';
        for (Flag wanted : KeyedAnswer.of(exercise).flags()) {
            hands.run(() -> {
                line().settings().endProperty().set(wanted.end());
                wanted.stimulus().ifPresent(line().settings().stimulusProperty()::set);
            });
            flag(String.valueOf(letter), wanted.startMetres(), wanted.kind(), wanted.verdict());
            wanted.endMetres()
                    .ifPresent(metres -> hands.run(() -> line().flags().stretchSelected(metres)));
            letter++;
        }
        assertTrue(hands.find("#sitting-line-1").getAccessibleText().contains("flags"));
        handIn();
        String receipt = ((TextField) hands.find("#receipt-code")).getText();
        press("#receipt-leave");

        begin("Bo");
        flag("A", 84.1, EventKind.PINCH, Verdict.DAMAGE);
        hands.doubleClickOnTrace(line().axis(), 40);
        press("#sitting-leave");
        press("#start-on-1");
        assertEquals(1, line().flags().draftsProperty().get().size(), "a flag without a kind is not kept");
        assertEquals(84.1, line().flags().draftsProperty().get().get(0).startMetres(), 0.3);
        handIn();
        press("#receipt-leave");

        begin("Cy");
        handIn();
        press("#receipt-leave");

        Path answers = Files.createDirectory(folder.resolve("answers"));
        for (String name : List.of("ada-quay", "bo", "cy")) {
            Files.move(folder.resolve(name + ".answers.age"), answers.resolve(name + ".answers.age"));
        }
        Files.write(
                answers.resolve("dee.answers.age"),
                Arrays.copyOf(Files.readAllBytes(answers.resolve("cy.answers.age")), 900));
        open("mark");
        Readable.check(hands.root());
        write("#mark-paper", file("paper.json"));
        write("#mark-folder-of", answers.toString());
        press("#mark-class");
        assertEquals("3 people were marked; 1 file was set aside.", said("#mark-message"));
        assertEquals(3, ((TableView<?>) hands.find("#class-people")).getItems().size());
        assertTrue(said("#class-figures").contains("1 passed"), said("#class-figures"));
        Label aside = (Label) hands.find("#class-set-aside").lookup(".label");
        assertTrue(aside.getText().startsWith("dee.answers.age: it was cut off"), aside.getText());
        write("#class-target", file("reports"));
        press("#class-reports");
        press("#class-keep");

        String report = text(folder.resolve("reports/001-ada-quay.pdf"));
        assertTrue(report.contains(receipt) && report.contains("Passed"), report);
        assertTrue(text(folder.resolve("reports/class.pdf")).contains("3 people were marked, 1 passed"));
        try (Stream<Path> files = Files.list(folder.resolve("reports"))) {
            assertEquals(
                    1,
                    files.filter(path -> path.toString().endsWith("certificate.pdf"))
                            .count());
        }
        assertEquals(3, records.read().records().size());
    }

    @Test
    void anExamSaysNothingOfWhatIsRightAndCanBeTakenUpAfterAKill() throws Exception {
        makeKeyAndPaper();
        begin("Ada");
        flag("A", 84.1, EventKind.SPLICE, Verdict.BELONGS);

        byte[] kept = Files.readAllBytes(folder.resolve("ada.sitting.json"));
        hands.type(KeyCode.ENTER, KeyCode.CONTROL);
        hands.type(KeyCode.H);

        assertEquals(0, hands.root().lookupAll(".finding-row").size());
        assertEquals(0, hands.root().lookupAll(".hint").size());
        assertTrue(new String(kept, java.nio.charset.StandardCharsets.UTF_8).contains("\"splice\""));
        // Another window, or another program, is kept out while this one is open; a kill ends that.
        press("#sitting-leave");
        press("#start-on-0");
        assertEquals(1, line().flags().draftsProperty().get().size());
    }

    @Test
    void aBackupAndTypedLettersGiveTheKeyBack() throws IOException {
        hands.type(KeyCode.DIGIT3, KeyCode.CONTROL);
        open("keys");
        write("#key-file", file("examiner.key"));
        press("#key-make");
        String made = ((TextField) hands.find("#key-public")).getText();
        write("#key-backup-file", file("backup.age"));
        write("#key-passphrase", "tide lamp");
        press("#key-backup");
        assertTrue(said("#key-message").contains("at least 12"), said("#key-message"));
        write("#key-passphrase", "tide lamp quay seven");
        write("#key-passphrase-again", "tide lamp quay seven");
        press("#key-backup");
        assertTrue(said("#key-message").contains("backup.age"), said("#key-message"));

        write("#key-lost-file", file("backup.age"));
        write("#key-lost-passphrase", "tide lamp quay eight");
        write("#key-file", file("again.key"));
        press("#key-restore");
        assertTrue(said("#key-message").contains("another key or passphrase"), said("#key-message"));
        write("#key-lost-passphrase", "tide lamp quay seven");
        press("#key-restore");
        assertEquals(made, ((TextField) hands.find("#key-public")).getText());

        String secret = Files.readAllLines(folder.resolve("examiner.key")).stream()
                .filter(line -> line.startsWith("AGE-SECRET-KEY-1"))
                .findFirst()
                .orElseThrow();
        write("#key-file", file("typed.key"));
        write(
                "#key-typed",
                secret.substring(0, 30) + "  " + secret.substring(30).toLowerCase(java.util.Locale.ROOT));
        press("#key-take-typed");
        assertEquals(made, ((TextField) hands.find("#key-public")).getText());
        assertEquals("", ((TextField) hands.find("#key-typed")).getText());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.bench.paper.PaperMenu;
import cablewright.ui.desktop.bench.paper.PaperViewModel;
import cablewright.ui.desktop.bench.paper.PaperViewModel.Sheets;
import cablewright.ui.desktop.bench.paper.PaperViewModel.Shown;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.Clipboard;
import javafx.scene.shape.Rectangle;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The menu that puts the Bench's exercise on paper and its tracks into pictures. */
@ExtendWith(ApplicationExtension.class)
class PaperMenuScreenTest {

    @TempDir
    private Path folder;

    private final Exercise exercise = Examples.exercise("quay-3", Optional.empty());
    private Optional<Shown> shown = Optional.empty();
    private final PaperViewModel model = new PaperViewModel(
            () -> exercise,
            () -> shown,
            new SimpleObjectProperty<>(LengthUnit.METRES),
            Threads.sameThread(),
            EditorTexts.open(Locale.ROOT));
    private EditorStage screen;

    @Start
    void start(Stage stage) {
        screen = new EditorStage(
                stage, new PaperMenu(model, () -> new Rectangle(40, 20), EditorTexts.open(Locale.ROOT)), 600);
    }

    private int pages(Path file, PaperSize paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertEquals(paper.width(), document.getPage(0).getMediaBox().getWidth(), 0.01);
            return document.getNumberOfPages();
        }
    }

    @Test
    void sheetsAreSavedOnThePaperThatIsChosen() throws IOException {
        screen.hands().run(() -> model.savePdf(Sheets.WORKSHEET, folder.resolve("work.pdf")));
        int work = pages(folder.resolve("work.pdf"), PaperSize.A4);
        screen.choose("paper", "paper-letter");
        screen.hands().run(() -> model.savePdf(Sheets.BOTH, folder.resolve("both.pdf")));
        assertTrue(pages(folder.resolve("both.pdf"), PaperSize.LETTER) > work);
        assertTrue(screen.label("paper-message").startsWith("both.pdf was saved"), screen.label("paper-message"));
    }

    @Test
    void tracksAreSavedByTheEndingOfTheName() throws IOException {
        screen.hands().run(() -> model.savePicture(folder.resolve("early.png")));
        assertEquals("There is no trace to draw yet.", screen.label("paper-message"));
        SimulatedPort port = new SimulatedPort(exercise.cable(), 75, new PropagationCache());
        shown = Optional.of(new Shown(
                new Reflectometer(exercise.instrument())
                        .measure(port, exercise.start().settings(), exercise.noiseSeed()),
                LineEnd.NEAR));
        for (String ending : new String[] {"png", "svg", "PDF"}) {
            Path file = folder.resolve("tracks." + ending);
            screen.hands().run(() -> model.savePicture(file));
            assertTrue(Files.size(file) > 1000, file + " has " + Files.size(file) + " bytes");
        }
        screen.hands().run(() -> model.savePicture(folder.resolve("tracks.doc")));
        assertTrue(screen.label("paper-message").contains(".png, .svg or .pdf"));
    }

    @Test
    void whatCanNotBeDoneIsSaidInWords() {
        screen.hands()
                .run(() ->
                        model.savePdf(Sheets.WORKSHEET, folder.resolve("none").resolve("work.pdf")));
        assertTrue(screen.label("paper-message").startsWith("That did not work"), screen.label("paper-message"));
    }

    @Test
    void pictureIsCopiedToTheClipboard() {
        screen.choose("paper", "paper-copy");
        assertEquals("The picture was copied.", screen.label("paper-message"));
        boolean[] there = new boolean[1];
        screen.hands().run(() -> there[0] = Clipboard.getSystemClipboard().hasImage());
        assertTrue(there[0]);
    }

    @Test
    void everyEntryHasWordsAndTheMainOnesHaveKeys() {
        MenuButton menu = (MenuButton) screen.hands().find("#paper");
        assertTrue(menu.getAccessibleText().contains("Worksheets"));
        long keys = menu.getItems().stream()
                .map(MenuItem::getAccelerator)
                .filter(key -> key != null)
                .count();
        assertEquals(2, keys);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchFile;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.bench.sheet.DataSheetPane;
import cablewright.ui.desktop.task.Threads;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.layout.GridPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A user's own cable type, typed from a data sheet. The sheet typed here is the published one of a type of the catalogue. */
@ExtendWith(ApplicationExtension.class)
class DataSheetScreenTest {

    private static final CableType PUBLISHED = Catalogue.standard().type("drop-6-foam");

    private final DocumentViewModel document =
            new DocumentViewModel(BenchDocument.of(Examples.exercise("quay-3", Optional.empty())));
    private EditorStage screen;

    @Start
    void start(Stage stage) {
        screen = new EditorStage(
                stage, new DataSheetPane(document, Threads.sameThread(), EditorTexts.open(Locale.ROOT)), 420);
    }

    private void typePublished() {
        screen.write("sheet-title", "Harbour drop 6");
        screen.write("sheet-ohms", String.valueOf(PUBLISHED.nominalImpedanceOhms()));
        screen.write("sheet-velocity", String.valueOf(PUBLISHED.nominalVelocityFraction()));
        List<AttenuationPoint> points = PUBLISHED.publishedAttenuation();
        for (int i = 0; i < points.size(); i++) {
            if (i >= 3) {
                screen.press("sheet-point-add");
            }
            screen.write(
                    "sheet-frequency-" + (i + 1), String.valueOf(points.get(i).frequencyHertz() / 1e6));
            screen.write(
                    "sheet-attenuation-" + (i + 1),
                    String.valueOf(100 * points.get(i).decibelPerMetre()));
        }
    }

    @Test
    void publishedSheetIsMetLaidSavedAndReadBack(@TempDir Path folder) throws Exception {
        typePublished();
        assertTrue(screen.label("sheet-fit").startsWith("The fit is off by"), screen.label("sheet-fit"));
        assertFalse(screen.label("sheet-fit").contains("more than 5 %"), screen.label("sheet-fit"));
        GridPane table = (GridPane) screen.hands().find("#sheet-residuals");
        int rows = 1 + PUBLISHED.publishedAttenuation().size();
        assertEquals(4 * rows, table.getChildren().size());
        String chart = screen.hands().find("#sheet-chart").getAccessibleText();
        assertTrue(chart.contains(PUBLISHED.publishedAttenuation().size() + " values"), chart);
        screen.press("sheet-lay");
        CableType laid = document.now().cable().runs().get(0).type();
        assertEquals("harbour-drop-6", laid.id());
        assertEquals(CableFamily.COAX_DROP, laid.family());
        AttenuationPoint middle = PUBLISHED.publishedAttenuation().get(2);
        double fitted = laid.section().attenuationDecibelPerMetreAt(middle.frequencyHertz());
        assertEquals(middle.decibelPerMetre(), fitted, 0.05 * middle.decibelPerMetre());
        assertEquals(133, document.now().cable().lengthMetres());
        assertEquals(3, document.now().cable().events().size(), "what lies on the run stays");
        Path file = folder.resolve("own.json");
        BenchFile.save(file, document.now(), BenchFile.Form.EXERCISE);
        assertEquals(
                document.now().cable(),
                BenchFile.open(file, Locale.ROOT).document().cable());
    }

    @Test
    void anotherTypeOfTheSameNameGetsANumber() {
        typePublished();
        screen.press("sheet-lay");
        screen.write("sheet-ohms", "73");
        screen.hands().run(() -> document.step("copy", now -> now.adding(now.exercise())));
        screen.press("sheet-lay");
        assertEquals(
                "harbour-drop-6-2", document.now().cable().runs().get(0).type().id());
        assertEquals(
                "harbour-drop-6",
                document.now().selecting(0).cable().runs().get(0).type().id());
    }

    @Test
    void tooLittleOrImpossibleIsSaidAndNothingIsLaid() {
        assertEquals("Give the attenuation at 2 or more frequencies.", screen.label("sheet-message"));
        assertTrue(screen.hands().find("#sheet-lay").isDisabled());
        typePublished();
        assertFalse(screen.hands().find("#sheet-lay").isDisabled());
        screen.write("sheet-velocity", "1.2");
        assertEquals("Out of range. Allowed is 0.05 to 1.", screen.label("sheet-velocity-problem"));
        assertTrue(screen.hands().find("#sheet-lay").isDisabled());
        screen.write("sheet-velocity", "0.85");
        screen.write("sheet-frequency-2", screen.text("sheet-frequency-1"));
        assertTrue(screen.label("sheet-message").contains("different frequencies"), screen.label("sheet-message"));
    }

    @Test
    void attenuationIsReadInTheUnitOfTheSheet() {
        screen.write("sheet-frequency-1", "10");
        screen.write("sheet-attenuation-1", "1.2");
        screen.write("sheet-frequency-2", "100");
        screen.write("sheet-attenuation-2", "4");
        screen.pick("sheet-unit", 30.48);
        screen.press("sheet-lay");
        double found = document.now().cable().runs().get(0).type().section().attenuationDecibelPerMetreAt(100e6);
        assertEquals(4 / 30.48, found, 0.05 * 4 / 30.48);
    }

    @Test
    void everyControlHasWords() {
        assertEquals(List.of(), screen.unnamed());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import atlantafx.base.theme.PrimerLight;
import cablewright.ui.demonstrations.Demonstration;
import cablewright.ui.demonstrations.Demonstrations;
import cablewright.ui.desktop.shell.Desktop;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.StackPane;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The screen of demonstrations as a person meets it: by keys, by pointer, light and dark. */
@ExtendWith(ApplicationExtension.class)
class DemonstrationsScreenTest {

    private static final long WAIT_MILLISECONDS = 60_000;

    @TempDir
    Path folder;

    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.METRES);
    private DemonstrationsView screen;
    private StackPane window;
    private Robot robot;

    @Start
    void start(Stage stage) {
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        screen = new DemonstrationsView(unit, Threads.sameThread(), Locale.ROOT);
        window = new StackPane(screen);
        window.getStyleClass().add("window");
        Scene scene = new Scene(new StackPane(window), 1270, 780);
        scene.getStylesheets().add(Desktop.class.getResource("desktop.css").toExternalForm());
        stage.setScene(scene);
        stage.show();
        screen.start();
        robot = new Robot();
    }

    private static <T> T ask(Callable<T> question) {
        return WaitForAsyncUtils.waitForAsyncFx(WAIT_MILLISECONDS, question);
    }

    private void run(Runnable action) {
        ask(() -> {
            action.run();
            window.applyCss();
            window.layout();
            return true;
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void type(KeyCode... keys) {
        for (KeyCode key : keys) {
            run(() -> robot.keyType(key));
        }
    }

    private <T extends Node> T find(String selector, Class<T> kind) {
        Node found = ask(() -> window.lookup(selector));
        assertTrue(kind.isInstance(found), "nothing on the screen is " + selector);
        return kind.cast(found);
    }

    private String caption() {
        return find("#caption", Label.class).getText();
    }

    private void answer(String id) {
        run(() -> screen.show(id));
        run(() -> find("#answer-0", RadioButton.class).setSelected(true));
        run(() -> find("#reason-0", RadioButton.class).setSelected(true));
        run(() -> find("#answer", Button.class).fire());
    }

    @Test
    void byKeysAloneAClassAnswersAndMovesASlider() {
        assertFalse(find(".lab", Node.class).isVisible());
        assertTrue(find("#answer", Button.class).isDisabled());
        run(() -> find("#answer-0", RadioButton.class).requestFocus());
        type(KeyCode.DOWN, KeyCode.DOWN, KeyCode.TAB);
        assertTrue(find("#answer", Button.class).isDisabled(), "a reason belongs to the answer");
        type(KeyCode.DOWN, KeyCode.TAB, KeyCode.SPACE);
        assertTrue(find(".lab", Node.class).isVisible());
        assertTrue(caption().contains("66.2\u00a0Ω instead of 75.0\u00a0Ω"), caption());
        assertTrue(find(".outcome-right", Label.class).getText().contains("Nothing"));
        run(() -> find("#set-eccentricity", Slider.class).requestFocus());
        String before = caption();
        type(KeyCode.RIGHT);
        assertNotEquals(before, caption());
    }

    @Test
    void onlyFromHereToThereShowsBothEdges() {
        answer("same");
        run(() -> find("#set-partial", CheckBox.class).setSelected(true));
        assertTrue(caption().contains("both edges show"), caption());
    }

    @Test
    void clickOnTheMapLooksAtThatPlace() {
        answer("damage");
        String before = caption();
        FigureView figure = find(".figure-view", FigureView.class);
        Bounds bounds = ask(() -> figure.localToScreen(figure.getBoundsInLocal()));
        run(() -> robot.mouseMove(
                bounds.getMinX() + 0.8 * bounds.getWidth(), bounds.getMinY() + 0.45 * bounds.getHeight()));
        run(() -> robot.mouseClick(MouseButton.PRIMARY));
        assertNotEquals(before, caption());
        assertTrue(screen.model("damage").valuesProperty().get().get("place") > 0.6);
        double shown = find("#set-place", Slider.class).getValue();
        assertTrue(shown > 0.6, "slider at " + shown);
    }

    @Test
    void widerPulseMergesTheTwoEvents() {
        answer("width");
        assertTrue(caption().contains("First event: clear."), caption());
        run(() -> find("#set-pulse", Slider.class).setValue(0.8));
        assertTrue(caption().contains("merged with its neighbour"), caption());
    }

    @Test
    void feetAreShownEverywhereAtOnce() {
        answer("velocity");
        assertTrue(caption().contains("100.0\u00a0m"), caption());
        run(() -> unit.set(LengthUnit.FEET));
        assertTrue(caption().contains("328.1\u00a0ft"), caption());
    }

    @Test
    void choosingAnotherPictureOfWaterChangesTheImpedance() {
        answer("water");
        run(() -> find("#set-picture", ComboBox.class).getSelectionModel().select(1));
        assertTrue(caption().contains("as a film on the core"), caption());
    }

    @Test
    void figureIsSavedWithItsNumbersBeside() throws IOException {
        answer("loss");
        for (String ending : new String[] {"png", "svg", "pdf"}) {
            Path file = folder.resolve("edges." + ending);
            run(() -> screen.view("loss").save(file));
            assertTrue(Files.size(file) > 2000, file + " has " + Files.size(file) + " bytes");
        }
        String data = Files.readString(folder.resolve("edges.csv"), StandardCharsets.UTF_8);
        assertTrue(data.startsWith("# Loss\n"));
        assertTrue(data.contains("\npanel,series,x,y,value\n1,the cable,"));
        assertTrue(find("#notice", Label.class).getText().startsWith("Saved " + folder.resolve("edges.pdf")));
        run(() -> screen.view("loss").save(folder.resolve("edges.doc")));
        assertTrue(find("#notice", Label.class).getText().contains(".png, .svg or .pdf"));
    }

    @Test
    void listIsWalkedByArrowKeys() {
        run(() -> find("#demonstration-same", ToggleButton.class).requestFocus());
        type(KeyCode.DOWN, KeyCode.DOWN);
        assertTrue(find("#demonstration-width", ToggleButton.class).isSelected());
        type(KeyCode.SPACE);
        assertTrue(find("#demonstration-width", ToggleButton.class).isSelected());
    }

    @Test
    void everyControlHasWordsForThoseWhoCanNotSeeIt() {
        for (Demonstration demonstration : Demonstrations.all()) {
            run(() -> screen.show(demonstration.id()));
            assertAllNamed();
            answer(demonstration.id());
            assertAllNamed();
            String shown = ask(() -> find(".figure-view", FigureView.class).getAccessibleText());
            assertTrue(shown.length() > 40, demonstration.id() + ": " + shown);
        }
    }

    /** A look-up takes one selector at a time. */
    private void assertAllNamed() {
        List<Node> controls = Stream.of(
                        ".button",
                        ".toggle-button",
                        ".radio-button",
                        ".check-box",
                        ".combo-box",
                        ".slider",
                        ".progress-bar")
                .flatMap(kind -> ask(() -> List.copyOf(window.lookupAll(kind))).stream())
                .toList();
        assertTrue(controls.size() > 10, "controls " + controls);
        for (Node node : controls) {
            boolean part = node.getStyleClass().contains("arrow-button") || node.getParent() instanceof ComboBox;
            String name = node.getAccessibleText();
            assertTrue(part || name != null && !name.isBlank(), node + " has no accessible text");
        }
    }

    @Test
    void atProjectorScaleTheListShrinksToNumbersAndTheFigureStaysWide() {
        answer("loss");
        run(() -> window.getStyleClass().add("projector"));
        run(() -> window.requestLayout());
        assertEquals("10", find("#demonstration-loss", ToggleButton.class).getText());
        assertTrue(find("#demonstration-loss", ToggleButton.class)
                .getAccessibleText()
                .contains("Loss"));
        double wide = ask(() -> find(".figure-view", FigureView.class).getWidth());
        assertTrue(wide > 0.5 * 1270, "figure is " + wide + " wide");
    }

    @Test
    void darkWindowHasADarkFigure() {
        answer("same");
        assertTrue(brightness() > 0.7);
        run(() -> {
            window.getStyleClass().add("dark");
        });
        assertTrue(brightness() < 0.4);
    }

    private double brightness() {
        WritableImage picture = ask(() -> find(".figure-card", Parent.class).snapshot(null, null));
        double sum = 0;
        int count = 0;
        for (int x = 0; x < picture.getWidth(); x += 5) {
            for (int y = 0; y < picture.getHeight(); y += 5) {
                sum += picture.getPixelReader().getColor(x, y).getBrightness();
                count++;
            }
        }
        return sum / count;
    }

    @Test
    void askingAgainPutsTheFigureAway() {
        answer("every");
        run(() -> find("#set-pitch", Slider.class).setValue(0.5));
        run(() -> find("#ask-again", Button.class).fire());
        assertEquals(
                DemonstrationViewModel.NO_ANSWER,
                ask(() -> screen.model("every").answerProperty().get()));
        assertFalse(find(".lab", Node.class).isVisible());
    }
}

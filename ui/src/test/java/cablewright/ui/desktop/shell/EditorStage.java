// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertTrue;

import atlantafx.base.theme.PrimerLight;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** An editor of the Bench on a stage of its own, as wide as the column in which it stands. */
final class EditorStage {

    private static final List<String> CONTROLS = List.of(
            ".button",
            ".toggle-button",
            ".radio-button",
            ".check-box",
            ".combo-box",
            ".menu-button",
            ".text-input",
            ".scroll-pane",
            ".titled-pane",
            ".list-view");

    private final Hands hands;

    private static final double WIDTH = 1270;
    private static final double HEIGHT = 780;
    private static final int LEAST_CONTROLS = 10;

    EditorStage(Stage stage, Region editor, double width) {
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        editor.setMaxWidth(width);
        StackPane window = new StackPane(editor);
        window.getStyleClass().add("window");
        Scene scene = new Scene(new StackPane(window), WIDTH, HEIGHT);
        scene.getStylesheets().add(Desktop.class.getResource("desktop.css").toExternalForm());
        stage.setScene(scene);
        stage.show();
        hands = new Hands(stage);
    }

    Hands hands() {
        return hands;
    }

    TextInputControl field(String id) {
        return (TextInputControl) hands.find("#" + id);
    }

    String text(String id) {
        return field(id).getText();
    }

    /** Writes into a field in place of what stands there, letter by letter would take long: all at once. */
    void write(String id, String text) {
        hands.run(() -> field(id).requestFocus());
        hands.run(() -> field(id).setText(text));
    }

    String label(String id) {
        Node node = hands.find("#" + id);
        return node.isVisible() ? ((javafx.scene.control.Labeled) node).getText() : "";
    }

    void press(String id) {
        Node node = hands.find("#" + id);
        hands.run(() -> ((ButtonBase) node).fire());
    }

    void choose(String menuId, String itemId) {
        MenuButton menu = (MenuButton) hands.find("#" + menuId);
        MenuItem item = menu.getItems().stream()
                .filter(it -> itemId.equals(it.getId()))
                .findFirst()
                .orElseThrow();
        hands.run(item::fire);
    }

    @SuppressWarnings("unchecked")
    <T> void pick(String id, T value) {
        ComboBox<T> box = (ComboBox<T>) hands.find("#" + id);
        hands.run(() -> box.setValue(value));
    }

    /** What has no words for a screen reader. */
    List<String> unnamed() {
        List<Node> controls = new ArrayList<>();
        // One by one, since a look-up takes a single selector.
        CONTROLS.forEach(kind -> controls.addAll(hands.root().lookupAll(kind)));
        assertTrue(controls.size() > LEAST_CONTROLS, "the look-up found " + controls.size() + " controls");
        List<String> faults = new ArrayList<>();
        for (Node node : controls) {
            boolean part = node.getParent() instanceof ComboBox
                    || node.getParent() instanceof TextInputControl
                    || node.getStyleClass().contains("arrow-button");
            String said = node.getAccessibleText();
            if (!part && (said == null || said.isBlank())) {
                faults.add(String.valueOf(node));
            }
        }
        return faults;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;

/** Walks a scene: each control must have words for a screen reader, and be large enough to read and to hit. */
final class Readable {

    private static final double LEAST_LETTER_PIXELS = 10.5;
    private static final double LEAST_CONTROL_PIXELS = 18;

    private Readable() {}

    static void check(Parent root) {
        List<String> faults = new ArrayList<>();
        int controls = walk(root, faults);
        assertTrue(controls > 20, "the walk found the controls; it found " + controls);
        assertTrue(faults.isEmpty(), String.join("\n", faults));
    }

    private static int walk(Node node, List<String> faults) {
        if (!node.isVisible()) {
            return 0;
        }
        int controls = 0;
        boolean isControl = node instanceof Control;
        if (isControl || node.isFocusTraversable()) {
            controls++;
            checkWords(node, faults);
            checkSize(node, faults);
        }
        if (node instanceof ScrollPane pane) {
            Node content = pane.getContent();
            controls += content == null ? 0 : walk(content, faults);
        } else if (!isControl && node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                controls += walk(child, faults);
            }
        }
        return controls;
    }

    private static void checkWords(Node node, List<String> faults) {
        String spoken = node.getAccessibleText();
        boolean says = spoken != null && !spoken.isBlank();
        boolean shows = node instanceof Labeled l
                && l.getText() != null
                && (!l.getText().isBlank() || !node.isFocusTraversable());
        if (!says && !shows) {
            faults.add(node + " has no words for a screen reader");
        }
    }

    private static void checkSize(Node node, List<String> faults) {
        if (node instanceof Labeled labeled && !labeled.getText().isBlank()) {
            double letters = labeled.getFont().getSize();
            if (letters < LEAST_LETTER_PIXELS) {
                faults.add(node + " is written in " + letters + " pixels");
            }
        }
        boolean isHit = node instanceof ButtonBase || node instanceof ComboBoxBase;
        double height = node.getLayoutBounds().getHeight();
        if (isHit && !(node instanceof Slider) && height < LEAST_CONTROL_PIXELS) {
            faults.add(node + " is only " + height + " pixels high");
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import javafx.scene.control.TextArea;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keys in a field: undo and redo are the document's, tab leaves also a field of many lines, escape ends the visit. */
final class EditKeys {

    private EditKeys() {}

    static void on(TextInputControl field, Typing model) {
        field.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                model.leave();
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, event -> pressed(event, field, model));
    }

    private static void pressed(KeyEvent event, TextInputControl field, Typing model) {
        boolean undo = event.isShortcutDown() && event.getCode() == KeyCode.Z && !event.isShiftDown();
        boolean redo = event.isShortcutDown()
                && (event.getCode() == KeyCode.Y || event.getCode() == KeyCode.Z && event.isShiftDown());
        if (undo && model.undo() || redo && model.redo()) {
            event.consume();
        } else if (event.getCode() == KeyCode.TAB && field instanceof TextArea && !event.isControlDown()) {
            event.consume();
            field.fireEvent(
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, event.isShiftDown(), true, false, false));
        } else if (event.getCode() == KeyCode.ENTER && !(field instanceof TextArea)) {
            model.leave();
        }
    }
}

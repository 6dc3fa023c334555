// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/** A column of fields that scrolls. Plain keys are its own, none of the page around it; Enter presses buttons. */
public class EditorPane extends ScrollPane {

    private static final String STYLE = "/cablewright/ui/desktop/bench/editors.css";

    private final VBox column = new VBox();

    /**
     * Makes an empty column.
     *
     * @param id name of the node
     * @param name what is edited here
     */
    protected EditorPane(String id, String name) {
        setId(id);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setAccessibleText(name);
        getStyleClass().add("editor");
        getStylesheets().add(EditorPane.class.getResource(STYLE).toExternalForm());
        column.getStyleClass().add("editor-column");
        setContent(column);
        column.addEventHandler(KeyEvent.KEY_PRESSED, EditorPane::keep);
    }

    private static void keep(KeyEvent event) {
        boolean leads = event.getCode() == KeyCode.ESCAPE
                || event.getCode() == KeyCode.TAB
                || event.getCode().isFunctionKey();
        if (event.isShortcutDown() || event.isAltDown() || leads) {
            return;
        }
        if (event.getCode() == KeyCode.ENTER && event.getTarget() instanceof ButtonBase button) {
            button.fire();
        }
        event.consume();
    }

    /**
     * Adds to the column.
     *
     * @param nodes what stands beneath
     */
    protected final void add(Node... nodes) {
        column.getChildren().addAll(nodes);
    }
}

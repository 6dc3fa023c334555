// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.form;

import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Two columns that fill a page of an exam. */
public final class Columns {

    private Columns() {}

    /**
     * Lays out two columns of the same importance.
     *
     * @param left the left one
     * @param right the right one
     * @return both, as high as the page
     */
    public static HBox alike(VBox left, VBox right) {
        left.getStyleClass().add("exam-column");
        HBox.setHgrow(left, Priority.ALWAYS);
        right.getStyleClass().add("exam-column");
        return beside(left, right);
    }

    /**
     * Lays out a column beside one that takes the room that is left.
     *
     * @param left the left one
     * @param right the right one
     * @return both, as high as the page
     */
    public static HBox beside(VBox left, Node right) {
        HBox.setHgrow(right, Priority.ALWAYS);
        HBox columns = new HBox(left, right);
        columns.getStyleClass().add("exam-columns");
        VBox.setVgrow(columns, Priority.ALWAYS);
        return columns;
    }
}

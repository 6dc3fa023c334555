// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.marking;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** A table of words that is as high as its rows. */
final class ResultTable<T> extends TableView<T> {

    private static final double ROW_LETTERS = 2.1;
    private static final double LEAST_ROWS = 2;
    private static final double MOST_ROWS = 14;
    private static final double LETTER_PIXELS = 13;

    ResultTable(String id, String name, List<T> rows) {
        setId(id);
        setAccessibleText(name);
        getStyleClass().addAll("attempts", "exam-table");
        setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        getItems().setAll(rows);
        double shown = Math.max(LEAST_ROWS, Math.min(MOST_ROWS, rows.size() + 1.8));
        setMinHeight(shown * ROW_LETTERS * LETTER_PIXELS);
        setPrefHeight(getMinHeight());
    }

    void column(String title, double width, Function<T, String> text, boolean number) {
        TableColumn<T, String> column = new TableColumn<>(title);
        column.setPrefWidth(width);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(text.apply(cell.getValue())));
        if (number) {
            column.getStyleClass().add("number-column");
        }
        getColumns().add(column);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.bench.BenchDocument;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Rows for the entries of a list, by their numbers: as many as there are entries, each made once. */
public final class IndexedRows extends VBox {

    private final ToIntFunction<BenchDocument> count;
    private final IntFunction<Node> make;
    private final List<Node> made = new ArrayList<>();
    private final ChangeListener<BenchDocument> follow = (o, before, now) -> show(now);

    /**
     * Makes the rows.
     *
     * @param document the document
     * @param count how many entries it has
     * @param make makes the row of an entry, by its number from 0
     */
    public IndexedRows(DocumentViewModel document, ToIntFunction<BenchDocument> count, IntFunction<Node> make) {
        this.count = count;
        this.make = make;
        getStyleClass().add("item-rows");
        show(document.now());
        document.documentProperty().addListener(new WeakChangeListener<>(follow));
    }

    /**
     * Returns a row that is shown.
     *
     * @param number its number, from 0
     * @return the row, if there is one
     */
    public Optional<Node> row(int number) {
        return number < getChildren().size() ? Optional.of(getChildren().get(number)) : Optional.empty();
    }

    private void show(BenchDocument now) {
        int wanted = count.applyAsInt(now);
        while (made.size() < wanted) {
            made.add(make.apply(made.size()));
        }
        if (getChildren().size() != wanted) {
            getChildren().setAll(made.subList(0, wanted));
        }
    }
}

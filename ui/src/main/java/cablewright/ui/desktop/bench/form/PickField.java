// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.bench.BenchDocument;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.choice.ChoiceLook;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/**
 * One of several, to be picked.
 *
 * @param <T> what is picked
 */
public final class PickField<T> extends VBox {

    private final DocumentViewModel document;
    private final Function<BenchDocument, List<T>> choices;
    private final Function<BenchDocument, T> shown;
    private final Function<T, Optional<String>> take;
    private final ComboBox<T> box = new ComboBox<>();
    private final ChangeListener<BenchDocument> follow = (o, before, now) -> show(now);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private boolean showing;

    /**
     * Makes a field.
     *
     * @param id name of the node
     * @param name what is picked there
     * @param document the document
     * @param choices what can be picked
     * @param shown what is
     * @param take puts what was picked into the document, and returns what is wrong if it can't be
     * @param words writes a choice
     */
    public PickField(
            String id,
            String name,
            DocumentViewModel document,
            Function<BenchDocument, List<T>> choices,
            Function<BenchDocument, T> shown,
            Function<T, Optional<String>> take,
            Function<T, String> words) {
        this.document = document;
        this.choices = choices;
        this.shown = shown;
        this.take = take;
        getStyleClass().add("field");
        Label label = new Label(name);
        label.getStyleClass().add("field-name");
        label.setLabelFor(box);
        label.setWrapText(true);
        box.setId(id);
        box.setAccessibleText(name);
        ChoiceLook.of(words).on(box);
        getChildren().addAll(label, box, new ProblemLabel(id, box, name, problem.getReadOnlyProperty()));
        show(document.now());
        box.valueProperty().addListener((o, before, now) -> picked(now));
        document.documentProperty().addListener(new WeakChangeListener<>(follow));
    }

    private void show(BenchDocument now) {
        showing = true;
        List<T> offered = choices.apply(now);
        if (!box.getItems().equals(offered)) {
            box.getItems().setAll(offered);
        }
        box.setValue(shown.apply(now));
        problem.set("");
        showing = false;
    }

    private void picked(T value) {
        if (!showing && value != null) {
            Optional<String> wrong = take.apply(value);
            show(document.now());
            problem.set(wrong.orElse(""));
        }
    }

    /** Writes the choices again, as in another unit of length. */
    public void retell() {
        showing = true;
        box.setValue(null);
        box.getItems().clear();
        showing = false;
        show(document.now());
    }

    /**
     * Leaves the name to screen readers.
     *
     * @return this field
     */
    public PickField<T> unnamed() {
        getChildren().remove(0);
        return this;
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.bench.BenchDocument;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;

/**
 * One text of the document that can be typed. Each letter is taken at once, all of one visit to the field as one step. What
 * can't be taken stays in the field as it was typed, with the reason; the document keeps the last good state.
 */
public final class FieldViewModel implements Typing {

    private final DocumentViewModel document;
    private final Function<BenchDocument, String> shown;
    private final Function<String, Optional<String>> take;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    // Held here, since the document only knows them weakly: a field that is gone hears nothing more.
    private final ChangeListener<BenchDocument> follow = this::changed;
    private final ChangeListener<Object> refresh = (o, before, now) -> show();
    private String held;
    private boolean showing;
    private boolean taking;

    /**
     * Makes a field.
     *
     * @param document the document
     * @param shown what the field shows of it
     * @param take puts what was typed into the document, and returns what is wrong if it can't be
     */
    public FieldViewModel(
            DocumentViewModel document,
            Function<BenchDocument, String> shown,
            Function<String, Optional<String>> take) {
        this.document = document;
        this.shown = shown;
        this.take = take;
        show();
        text.addListener((o, before, now) -> typed(before, now));
        document.documentProperty().addListener(new WeakChangeListener<>(follow));
    }

    /**
     * Shows the field anew also when something else changes, such as the unit of lengths.
     *
     * @param other what else
     * @return this field
     */
    public FieldViewModel following(ObservableValue<?> other) {
        other.addListener(new WeakChangeListener<>(refresh));
        return this;
    }

    /** Each word is a step that can be undone by itself. */
    private void typed(String before, String now) {
        if (!showing) {
            taking = true;
            problem.set(take.apply(now).orElse(""));
            taking = false;
            if (spaces(before) != spaces(now)) {
                document.endMovement();
            }
        }
    }

    private static long spaces(String written) {
        return written.chars().filter(Character::isWhitespace).count();
    }

    private void changed(ObservableValue<? extends BenchDocument> o, BenchDocument before, BenchDocument now) {
        String next = shown.apply(now);
        boolean another = before.index() != now.index();
        if (taking) {
            held = next;
        } else if (another || !next.equals(held)) {
            show();
        }
    }

    private void show() {
        held = shown.apply(document.now());
        showing = true;
        text.set(held);
        problem.set("");
        showing = false;
    }

    /** Ends the visit: what was taken is one step, and is written as it is held. */
    @Override
    public void leave() {
        document.endMovement();
        if (problem.get().isEmpty()) {
            show();
        }
    }

    @Override
    public StringProperty textProperty() {
        return text;
    }

    @Override
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    @Override
    public boolean undo() {
        document.undo();
        return true;
    }

    @Override
    public boolean redo() {
        document.redo();
        return true;
    }
}

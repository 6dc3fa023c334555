// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A text that is typed and is no part of the document yet. */
public final class LocalField implements Typing {

    private final StringProperty text;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    /**
     * Makes a field.
     *
     * @param first what stands in it at first
     * @param take takes what was typed, and returns what is wrong if it can't be used
     */
    public LocalField(String first, Function<String, Optional<String>> take) {
        this.text = new SimpleStringProperty(first);
        text.addListener((o, before, now) -> problem.set(take.apply(now).orElse("")));
        problem.set(take.apply(first).orElse(""));
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
    public void leave() {
        // Nothing is pending: each letter was taken.
    }

    @Override
    public boolean undo() {
        return false;
    }

    @Override
    public boolean redo() {
        return false;
    }
}

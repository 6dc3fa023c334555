// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.document;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.EditHistory;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The document on the Bench with all that was done to it. Every pane of the Bench reads this one document and changes it
 * through {@link #step} or {@link #move} only, so that everything can be undone and an impossible edit changes nothing.
 */
public final class DocumentViewModel {

    private final ReadOnlyObjectWrapper<BenchDocument> document = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Optional<String>> undoName = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> redoName = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> locked = new ReadOnlyObjectWrapper<>(Optional.empty());
    private EditHistory<BenchDocument> history;

    /**
     * Puts a document on the Bench.
     *
     * @param first the document
     */
    public DocumentViewModel(BenchDocument first) {
        open(first);
    }

    /**
     * Puts another document on the Bench, with nothing to undo.
     *
     * @param other the document
     */
    public void open(BenchDocument other) {
        open(other, Optional.empty());
    }

    /**
     * Puts another document on the Bench, perhaps only to be looked at.
     *
     * @param other the document
     * @param whyLocked why nothing can be changed in it, a sentence; empty where everything can
     */
    public void open(BenchDocument other, Optional<String> whyLocked) {
        history = new EditHistory<>(other);
        locked.set(whyLocked);
        publish();
    }

    /**
     * Does a step that can be undone by itself.
     *
     * @param name what is done, as the undo button shows it
     * @param edit makes the next document of this one
     * @return what is wrong with it, if it can't be done; then nothing changed
     */
    public Optional<String> step(String name, UnaryOperator<BenchDocument> edit) {
        return attempt(edit, next -> history.step(name, next));
    }

    /**
     * Does a step of a movement, such as that of a dragged slider; all steps of one movement are undone together.
     *
     * @param name what is done, as the undo button shows it
     * @param of names the movement
     * @param edit makes the next document of this one
     * @return what is wrong with it, if it can't be done; then nothing changed
     */
    public Optional<String> move(String name, String of, UnaryOperator<BenchDocument> edit) {
        return attempt(edit, next -> history.move(name, of, next));
    }

    private Optional<String> attempt(UnaryOperator<BenchDocument> edit, Consumer<BenchDocument> take) {
        if (locked.get().isPresent()) {
            return locked.get();
        }
        BenchDocument next;
        try {
            next = edit.apply(history.now());
        } catch (IllegalArgumentException impossible) {
            return Optional.of(impossible.getMessage());
        }
        take.accept(next);
        publish();
        return Optional.empty();
    }

    /** Ends the movement: what follows is another step. */
    public void endMovement() {
        history.endMovement();
    }

    /** Goes one step back, if there is one. */
    public void undo() {
        history.undo();
        publish();
    }

    /** Goes one step on again, if there is one. */
    public void redo() {
        history.redo();
        publish();
    }

    private void publish() {
        document.set(history.now());
        undoName.set(history.undoName());
        redoName.set(history.redoName());
    }

    /**
     * Returns the document that holds.
     *
     * @return the document
     */
    public BenchDocument now() {
        return document.get();
    }

    /**
     * Returns the document before the last step.
     *
     * @return the document; empty at the start
     */
    public Optional<BenchDocument> previous() {
        return history.previous();
    }

    public ReadOnlyObjectProperty<BenchDocument> documentProperty() {
        return document.getReadOnlyProperty();
    }

    /**
     * What the next undo would take back.
     *
     * @return the property; empty where there is nothing
     */
    public ReadOnlyObjectProperty<Optional<String>> undoNameProperty() {
        return undoName.getReadOnlyProperty();
    }

    /**
     * What the next redo would do again.
     *
     * @return the property; empty where there is nothing
     */
    public ReadOnlyObjectProperty<Optional<String>> redoNameProperty() {
        return redoName.getReadOnlyProperty();
    }
}

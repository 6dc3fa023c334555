// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.bench.edit.RecordEdits;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.track.MarkActions;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;

/** What the pointer does on the track of the drawings: an item is selected, and dragged to where the drawing claims it. */
final class DrawingActions implements MarkActions {

    private final BenchViewModel model;
    private final ObjectProperty<Optional<String>> selected;
    private final Runnable showPane;

    DrawingActions(BenchViewModel model, ObjectProperty<Optional<String>> selected, Runnable showPane) {
        this.model = model;
        this.selected = selected;
        this.showPane = showPane;
    }

    @Override
    public void select(String id, boolean beside) {
        selected.set(Optional.of(id));
        showPane.run();
    }

    @Override
    public void drag(String id, double shownMetres) {
        boolean isFar = model.trace().endProperty().get() == LineEnd.FAR;
        double length = model.document().now().record().lengthMetres().orElse(0);
        double metres = Math.max(0, Math.rint((isFar ? length - shownMetres : shownMetres) * 10) / 10);
        model.document()
                .move(
                        model.texts().say("do.moveDrawn", id),
                        "drawn/" + id,
                        before -> before.withRecord(record -> RecordEdits.moved(record, id, metres)));
    }

    @Override
    public void drop() {
        model.document().endMovement();
    }

    @Override
    public void place(double shownMetres) {
        // What is drawn is added in the pane of the record, where its kind is chosen.
        showPane.run();
    }
}

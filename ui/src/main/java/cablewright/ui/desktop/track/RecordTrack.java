// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.drawing.track.RecordClaims;
import cablewright.ui.drawing.track.RecordPainter;
import cablewright.ui.drawing.track.TrackSheet;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;

/**
 * What the drawing says, at the distances that it claims. Its things are hollow: they are claims. Its distances stay where
 * they are when the velocity is changed, so that a known splice can be used to find the velocity.
 */
public final class RecordTrack extends Track {

    private static final double LEAST_FOR_A_NOTE = 48;

    private final ObservableValue<AsBuiltRecord> record;
    private final ObjectProperty<Optional<String>> selected = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<LineEnd> end;
    private final Words words;
    private final String caption;

    /**
     * Makes the track.
     *
     * @param axis the shared axis
     * @param record what the drawings say
     * @param end the end that is tested
     * @param words names of kinds and ends
     * @param caption what stands beside it
     * @param accessibleName what a screen reader calls it
     */
    public RecordTrack(
            AxisViewModel axis,
            ObservableValue<AsBuiltRecord> record,
            ObjectProperty<LineEnd> end,
            Words words,
            String caption,
            String accessibleName) {
        super(axis);
        this.record = record;
        this.end = end;
        this.words = words;
        this.caption = caption;
        setId("record-track");
        getStyleClass().add("record-track");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        redrawOn(end, record, selected);
        record.addListener((o, before, now) -> speak(accessibleName));
        axis.unitProperty().addListener((o, before, now) -> speak(accessibleName));
        end.addListener((o, before, now) -> speak(accessibleName));
        speak(accessibleName);
        TrackPointer.on(this);
    }

    /**
     * Lets items be selected and dragged with the pointer.
     *
     * @param actions what becomes of items
     */
    public void edit(MarkActions actions) {
        setFocusTraversable(true);
        TrackPointer.on(this, new MarkGrips(this, this::grips, actions));
    }

    private List<MarkGrips.Mark> grips() {
        List<MarkGrips.Mark> marks = new ArrayList<>();
        for (RecordClaims.Claim claim : claims().claims()) {
            if (!claim.isEnd()) {
                marks.add(new MarkGrips.Mark(claim.id(), claim.metres(), claim.metres()));
            }
        }
        return marks;
    }

    /**
     * Returns which item is selected.
     *
     * @return its name; empty where none is
     */
    public ObjectProperty<Optional<String>> selectedProperty() {
        return selected;
    }

    private void speak(String name) {
        StringBuilder said = new StringBuilder(name);
        for (RecordClaims.Claim claim : claims().claims()) {
            said.append(". ")
                    .append(words.with(axis().unitProperty().get()).quantities().length(claim.metres()))
                    .append(": ")
                    .append(claim.text());
        }
        if (!note().isBlank()) {
            said.append(". ").append(note());
        }
        setAccessibleText(said.toString());
    }

    /** When it was drawn, and whether the brief warns that it may be wrong. */
    private String note() {
        AsBuiltRecord drawn = record.getValue();
        String warning = words.texts().say("record.mayLie");
        return drawn.mayLie() ? drawn.note().isBlank() ? warning : drawn.note() + " · " + warning : drawn.note();
    }

    private RecordClaims claims() {
        return RecordClaims.of(record.getValue(), end.get(), words);
    }

    @Override
    void draw(TrackSheet sheet) {
        RecordPainter painter = new RecordPainter(sheet);
        painter.draw(claims(), selected.get(), caption);
        if (getHeight() >= LEAST_FOR_A_NOTE * scale()) {
            painter.drawNote(note());
        }
    }

    @Override
    void drawOverlay(TrackSheet sheet) {
        sheet.drawCursor(cursorMetres(), 0, getHeight(), false);
    }

    @Override
    protected double computeMinHeight(double width) {
        return RecordPainter.LEAST_HEIGHT * scale();
    }

    @Override
    protected double computePrefHeight(double width) {
        return RecordPainter.HEIGHT * scale();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.exercise.AsBuiltRecord;
import cablewright.lessons.exercise.RecordedItem;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.drawing.axis.LabelRows;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/**
 * What the drawing says, at the distances that it claims. Its things are hollow: they are claims. Its distances stay where
 * they are when the velocity is changed, so that a known splice can be used to find the velocity.
 */
public final class RecordTrack extends Track {

    private static final int LABEL_ROWS = 2;

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
        for (RecordedItem item : record.getValue().items()) {
            fromTestedEnd(item.positionMetres())
                    .ifPresent(metres -> marks.add(new MarkGrips.Mark(item.id(), metres, metres)));
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

    private record Claim(String id, double metres, String text, boolean isEnd) {}

    private void speak(String name) {
        StringBuilder said = new StringBuilder(name);
        for (Claim claim : claims()) {
            said.append(". ")
                    .append(words.with(axis().unitProperty().get()).quantities().length(claim.metres()))
                    .append(": ")
                    .append(claim.text());
        }
        setAccessibleText(said.toString());
    }

    private boolean isTurned() {
        return end.get() == LineEnd.FAR;
    }

    /** Where a claim is as counted from the tested end; nowhere if the record gives no length to count back from. */
    private OptionalDouble fromTestedEnd(double metres) {
        if (!isTurned()) {
            return OptionalDouble.of(metres);
        }
        return record.getValue().lengthMetres().isPresent()
                ? OptionalDouble.of(record.getValue().lengthMetres().getAsDouble() - metres)
                : OptionalDouble.empty();
    }

    private List<Claim> claims() {
        List<Claim> claims = new ArrayList<>();
        for (RecordedItem item : record.getValue().items()) {
            fromTestedEnd(item.positionMetres())
                    .ifPresent(metres -> claims.add(new Claim(item.id(), metres, item.label(), false)));
        }
        record.getValue().lengthMetres().ifPresent(length -> claims.add(new Claim("", length, endLabel(), true)));
        claims.sort(Comparator.comparingDouble(Claim::metres));
        return claims;
    }

    private String endLabel() {
        return isTurned()
                ? words.end(LineEnd.NEAR)
                : words.recordedEnd(record.getValue().farEnd());
    }

    private double lineY() {
        return 20 * scale();
    }

    @Override
    void draw(GraphicsContext g) {
        drawDistanceGrid(g, 0, getHeight());
        drawLine(g);
        int room = getHeight() < 58 * scale() ? 1 : LABEL_ROWS;
        LabelRows rows = new LabelRows(gutter() - 20 * scale(), getWidth() - 8 * scale(), 10 * scale(), room);
        for (Claim claim : claims()) {
            double x = view().pixel(claim.metres());
            if (x >= gutter() - 1 && x <= getWidth() - rightMargin() + 1) {
                drawClaim(g, x, claim, rows);
            }
        }
        g.setFont(smallFont());
        g.setFill(ink(Ink.FAINT));
        g.setTextAlign(TextAlignment.RIGHT);
        g.setTextBaseline(VPos.CENTER);
        g.fillText(caption, gutter() - 9 * scale(), lineY());
    }

    private void drawLine(GraphicsContext g) {
        double from = Math.max(gutter(), view().pixel(0));
        double claimed = view().pixel(
                        record.getValue().lengthMetres().orElse(axis().extent().toMetres()));
        double to = Math.min(getWidth() - rightMargin(), claimed);
        if (to <= from) {
            return;
        }
        g.setStroke(ink(Ink.SHIELD));
        g.setLineWidth(1.5 * scale());
        g.setLineDashes(6 * scale(), 4 * scale());
        g.strokeLine(from, lineY(), to, lineY());
        g.setLineDashes();
        if (view().fromMetres() <= 0) {
            drawHollow(g, view().pixel(0), true);
        }
    }

    private void drawClaim(GraphicsContext g, double x, Claim claim, LabelRows rows) {
        if (selected.get().filter(claim.id()::equals).isPresent()) {
            double r = 10 * scale();
            g.setStroke(ink(Ink.TRACE));
            g.setLineWidth(1.8 * scale());
            g.strokeRoundRect(x - r, lineY() - r, 2 * r, 2 * r, 9 * scale(), 9 * scale());
        }
        drawHollow(g, x, claim.isEnd());
        String text = TextSize.cut(claim.text(), smallFont(), 170 * scale());
        double width = TextSize.width(text, smallFont());
        rows.next(x, width).ifPresent(place -> {
            g.setFont(smallFont());
            g.setFill(ink(Ink.TEXT));
            g.setTextAlign(TextAlignment.LEFT);
            g.setTextBaseline(VPos.TOP);
            g.fillText(text, place.leftPixels(), lineY() + (10 + 16 * place.row()) * scale());
        });
    }

    private void drawHollow(GraphicsContext g, double x, boolean square) {
        double r = 5.5 * scale();
        g.setFill(ink(Ink.PAPER));
        g.setStroke(ink(Ink.SHIELD));
        g.setLineWidth(1.8 * scale());
        if (square) {
            g.fillRect(x - r * 0.8, lineY() - r, 1.6 * r, 2 * r);
            g.strokeRect(x - r * 0.8, lineY() - r, 1.6 * r, 2 * r);
        } else {
            g.fillOval(x - r, lineY() - r, 2 * r, 2 * r);
            g.strokeOval(x - r, lineY() - r, 2 * r, 2 * r);
        }
    }

    @Override
    void drawOverlay(GraphicsContext g) {
        drawHair(g, 0, getHeight());
    }

    @Override
    protected double computeMinHeight(double width) {
        return 50 * scale();
    }

    @Override
    protected double computePrefHeight(double width) {
        return 62 * scale();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.simulator.cable.Event;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.screen.DrawingSurface;
import cablewright.ui.drawing.track.EventSymbols;
import java.util.Optional;
import javafx.scene.AccessibleRole;

/** The symbol of an event as large as a letter or two, beside its name in lists and on buttons. */
public final class EventIcon extends DrawingSurface {

    private static final double WIDTH_LETTERS = 2;
    private static final double HEIGHT_LETTERS = 1.7;

    private final Optional<Event> event;

    /**
     * Makes the symbol.
     *
     * @param event an event of the kind; empty leaves its room free, so that names in a list stand under each other
     */
    public EventIcon(Optional<Event> event) {
        this.event = event;
        getStyleClass().add("event-icon");
        setAccessibleRole(AccessibleRole.NODE);
        setMouseTransparent(true);
    }

    @Override
    protected double computePrefWidth(double height) {
        return Math.round(WIDTH_LETTERS * fontSize());
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.round(HEIGHT_LETTERS * fontSize());
    }

    @Override
    protected double computeMinWidth(double height) {
        return computePrefWidth(height);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void draw(Pen pen) {
        event.ifPresent(it -> EventSymbols.drawAlone(pen, palette(), it, new Box(0, 0, getWidth(), getHeight())));
    }
}

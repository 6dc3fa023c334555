// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/** The pointer on the tracks: it carries the cursor, drags flags and the axis, and the wheel zooms. */
public final class TrackPointer {

    private static final double WHEEL_NOTCH = 40;
    private static final double ZOOM_OF_NOTCH = 1.2;

    private final Track track;
    private final Grips grips;
    private Optional<Grips.Grip> held = Optional.empty();
    private boolean wasDragged;
    private double lastX;

    private TrackPointer(Track track, Grips grips) {
        this.track = track;
        this.grips = grips;
        track.setOnMouseMoved(this::moved);
        track.setOnMousePressed(this::pressed);
        track.setOnMouseDragged(this::draggedTo);
        track.setOnMouseReleased(this::released);
        track.setOnMouseClicked(this::clicked);
        track.setOnScroll(this::scrolled);
    }

    /**
     * Lets the pointer work on the trace track.
     *
     * @param track the track
     * @param actions what becomes of flags
     */
    public static void on(TraceTrack track, FlagMarkerActions actions) {
        new TrackPointer(track, new FlagMarkerGrips(track, actions));
    }

    /**
     * Lets the pointer carry the cursor and the axis, where there is nothing else to take hold of.
     *
     * @param track the track
     */
    public static void on(TraceTrack track) {
        new TrackPointer(track, Grips.NONE);
    }

    static void on(Track track, Grips grips) {
        new TrackPointer(track, grips);
    }

    static void on(Track track) {
        new TrackPointer(track, Grips.NONE);
    }

    private void moved(MouseEvent event) {
        track.axis().moveCursorTo(track.view().metres(event.getX()));
        track.setCursor(grips.at(event.getX(), event.getY()).isPresent() ? Cursor.H_RESIZE : Cursor.DEFAULT);
    }

    private void pressed(MouseEvent event) {
        if (track.isFocusTraversable()) {
            track.requestFocus();
        }
        lastX = event.getX();
        wasDragged = false;
        track.axis().moveCursorTo(track.view().metres(event.getX()));
        held = event.getButton() == MouseButton.PRIMARY ? grips.at(event.getX(), event.getY()) : Optional.empty();
        if (held.isEmpty() && event.getButton() == MouseButton.PRIMARY && event.isShiftDown()) {
            held = grips.begun(track.view().metres(event.getX()));
        }
        held.ifPresent(grip -> grip.pressed(event.isShiftDown() || event.isShortcutDown()));
    }

    private void draggedTo(MouseEvent event) {
        double metres = track.view().metres(event.getX());
        if (held.isPresent()) {
            wasDragged = true;
            held.get().dragged(metres);
            track.axis().moveCursorTo(metres);
        } else if (event.getButton() == MouseButton.PRIMARY) {
            track.axis().pan((lastX - event.getX()) * track.view().metresPerPixel());
        }
        lastX = event.getX();
    }

    private void released(MouseEvent event) {
        if (wasDragged) {
            held.ifPresent(Grips.Grip::dropped);
        }
        held = Optional.empty();
    }

    private void clicked(MouseEvent event) {
        boolean twice = event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2;
        if (twice && grips.at(event.getX(), event.getY()).isEmpty()) {
            grips.placed(track.view().metres(event.getX()));
        }
    }

    private void scrolled(ScrollEvent event) {
        if (event.isShiftDown() || event.getDeltaX() != 0) {
            double delta = event.getDeltaX() != 0 ? event.getDeltaX() : event.getDeltaY();
            track.axis().pan(-delta * track.view().metresPerPixel());
        } else {
            double factor = Math.pow(ZOOM_OF_NOTCH, event.getDeltaY() / WHEEL_NOTCH);
            track.axis().zoomBy(factor, track.view().metres(event.getX()));
        }
        event.consume();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.screen.DrawingSurface;
import cablewright.ui.drawing.track.TrackSheet;

/** A strip drawn over the shared distance axis. All lengths grow with the font. */
abstract class Track extends DrawingSurface {

    private final AxisViewModel axis;

    Track(AxisViewModel axis) {
        this.axis = axis;
        getStyleClass().add("line-track");
        redrawOn(axis.viewProperty(), axis.unitProperty());
        redrawOverlayOn(axis.cursorMetresProperty());
    }

    @Override
    protected final void draw(Pen pen) {
        draw(sheet(pen));
    }

    @Override
    protected final void drawOverlay(Pen pen) {
        drawOverlay(sheet(pen));
    }

    private TrackSheet sheet(Pen pen) {
        return new TrackSheet(
                pen,
                palette(),
                area(),
                axis.viewProperty().get(),
                axis.unitProperty().get(),
                fontSize());
    }

    /** Draws what changes seldom. */
    abstract void draw(TrackSheet sheet);

    /** Draws what follows the pointer. */
    abstract void drawOverlay(TrackSheet sheet);

    final AxisViewModel axis() {
        return axis;
    }

    final Box area() {
        return new Box(0, 0, getWidth(), getHeight());
    }

    /** Returns the scale at which everything is drawn. */
    final double scale() {
        return TrackSheet.scale(fontSize());
    }

    final DistanceView view() {
        return TrackSheet.viewOn(area(), axis.viewProperty().get(), fontSize());
    }

    final double cursorMetres() {
        return axis.cursorMetresProperty().get();
    }
}

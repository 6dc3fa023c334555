package cablewright.ui.desktop.track;

import cablewright.simulator.explanation.EventSight;
import cablewright.simulator.explanation.PlaceSight;
import cablewright.ui.chart.CableDrawing;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/**
 * Draws the wave on its way: the outgoing front, and behind it the first echoes that run back. Since the axis is time there
 * and back at the set velocity, all of them move evenly on it. Echoes of echoes are left out.
 */
final class WavePainter {

    private static final double HUMP = 9;
    private static final double FULL_HEIGHT_SHARE = 0.02;

    private final Track track;

    WavePainter(Track track) {
        this.track = track;
    }

    void draw(GraphicsContext g, double front, CableDrawing drawing, List<EventSight> sights, double y) {
        if (front <= drawing.endShownMetres()) {
            hump(g, front, y, 1, 1);
        } else {
            hump(g, 2 * drawing.endShownMetres() - front, y, 1, -1);
        }
        for (EventSight sight : sights) {
            for (PlaceSight place : sight.places()) {
                double back = 2 * place.shownMetres() - front;
                if (front > place.shownMetres() && back > 0) {
                    double size = Math.min(1, Math.abs(place.expectedVolts()) / FULL_HEIGHT_SHARE);
                    hump(g, back, y, Math.signum(place.expectedVolts()) * Math.max(0.15, size), -1);
                }
            }
        }
    }

    private void hump(GraphicsContext g, double metres, double y, double size, int direction) {
        double x = track.view().pixel(metres);
        double s = track.scale();
        if (x < track.gutter() || x > track.getWidth() - track.rightMargin()) {
            return;
        }
        Color colour = track.ink(Ink.WAVE);
        double h = HUMP * s * size;
        double w = 8 * s;
        g.setStroke(colour);
        g.setLineWidth(2 * s);
        g.beginPath();
        g.moveTo(x - w, y);
        g.bezierCurveTo(x - w / 2, y, x - w / 2, y - h, x, y - h);
        g.bezierCurveTo(x + w / 2, y - h, x + w / 2, y, x + w, y);
        g.stroke();
        g.setFill(colour);
        double tip = x + direction * (w + 5 * s);
        double root = x + direction * w;
        g.fillPolygon(new double[] {root, tip, root}, new double[] {y - 3 * s, y, y + 3 * s}, 3);
    }
}

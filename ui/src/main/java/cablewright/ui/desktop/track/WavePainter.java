// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.ui.drawing.track.WavePlay;
import javafx.scene.canvas.GraphicsContext;

/** Draws the wave on the line at one moment, as high as the gain that is set makes it; what is higher is cut off. */
final class WavePainter {

    private final Track track;

    WavePainter(Track track) {
        this.track = track;
    }

    void draw(GraphicsContext g, WavePlay play, int frame, double clipVolts, double middle, double half) {
        double[] x = new double[play.places()];
        double[] y = new double[play.places()];
        for (int i = 0; i < x.length; i++) {
            double share = Math.max(-1, Math.min(1, play.volts(frame, i) / clipVolts));
            x[i] = track.view().pixel(play.shownMetres(i));
            y[i] = middle - share * half;
        }
        g.save();
        g.beginPath();
        g.rect(track.gutter(), 0, track.view().widthPixels(), track.getHeight());
        g.clip();
        g.setFill(track.ink(Ink.WAVE).deriveColor(0, 1, 1, 0.16));
        fill(g, x, y, middle);
        g.setStroke(track.ink(Ink.WAVE));
        g.setLineWidth(2 * track.scale());
        g.strokePolyline(x, y, x.length);
        g.restore();
    }

    private static void fill(GraphicsContext g, double[] x, double[] y, double middle) {
        g.beginPath();
        g.moveTo(x[0], middle);
        for (int i = 0; i < x.length; i++) {
            g.lineTo(x[i], y[i]);
        }
        g.lineTo(x[x.length - 1], middle);
        g.closePath();
        g.fill();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.simulator.cable.FarEnd;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.Words;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/** Draws what the line ends in: a bare end, a strap, a resistor, or cable that goes on. */
final class EndSymbol {

    private final Track track;

    EndSymbol(Track track) {
        this.track = track;
    }

    void draw(GraphicsContext g, CableDrawing drawing, Body body, Words words) {
        double x = track.view().pixel(drawing.endShownMetres());
        double s = track.scale();
        g.setStroke(track.ink(Ink.TEXT));
        g.setLineWidth(1.6 * s);
        if (drawing.farEnd() instanceof FarEnd.Open) {
            g.strokeLine(x + 3 * s, body.top() - 2 * s, x + 3 * s, body.bottom() + 2 * s);
            g.setLineDashes(2 * s, 3 * s);
            g.strokeLine(x + 3 * s, body.middle(), x + 14 * s, body.middle());
            g.setLineDashes();
        } else if (drawing.farEnd() instanceof FarEnd.Short) {
            g.setLineWidth(4 * s);
            g.strokePolyline(
                    new double[] {x, x + 9 * s, x + 9 * s, x},
                    new double[] {body.middle(), body.middle(), body.bottom() - 2 * s, body.bottom() - 2 * s},
                    4);
        } else if (drawing.farEnd() instanceof FarEnd.Endless) {
            g.setLineDashes(5 * s, 4 * s);
            g.strokeLine(x, body.top() + 2 * s, x + 24 * s, body.top() + 2 * s);
            g.strokeLine(x, body.bottom() - 2 * s, x + 24 * s, body.bottom() - 2 * s);
            g.setLineDashes();
        } else {
            drawResistor(g, x, body, s);
        }
        label(g, words.farEnd(drawing.farEnd()), x, body);
    }

    private void drawResistor(GraphicsContext g, double x, Body body, double s) {
        double y = body.middle();
        double step = 3 * s;
        double swing = 5 * s;
        double[] xs = new double[9];
        double[] ys = new double[9];
        for (int i = 0; i < 7; i++) {
            xs[i] = x + 3 * s + i * step;
            ys[i] = i == 0 || i == 6 ? y : i % 2 == 0 ? y + swing : y - swing;
        }
        xs[7] = xs[6] + 3 * s;
        ys[7] = y;
        xs[8] = xs[7];
        ys[8] = body.bottom() + 4 * s;
        g.strokePolyline(xs, ys, 9);
    }

    private void label(GraphicsContext g, String text, double x, Body body) {
        if (x < track.gutter() || x > track.getWidth() - track.rightMargin()) {
            return;
        }
        double width = TextSize.width(text, track.smallFont());
        double left = Math.min(x + 4 * track.scale(), track.getWidth() - width - 6 * track.scale());
        g.setFont(track.smallFont());
        g.setFill(track.ink(Ink.FAINT));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BOTTOM);
        g.fillText(text, left, body.top() - 3 * track.scale());
    }
}

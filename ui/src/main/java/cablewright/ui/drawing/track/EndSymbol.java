// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.cable.FarEnd;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.words.Words;

/** Draws what the line ends in: a bare end, a strap, a resistor, or cable that goes on. */
final class EndSymbol {

    private final TrackSheet sheet;
    private final Body body;
    private final double s;

    EndSymbol(TrackSheet sheet, Body body) {
        this.sheet = sheet;
        this.body = body;
        this.s = sheet.scale();
    }

    void draw(CableDrawing drawing, Words words) {
        double x = sheet.pixel(drawing.endShownMetres());
        double middle = body.middle();
        if (drawing.farEnd() instanceof FarEnd.Open) {
            line(1.6, 0, x + 3 * s, body.top() - 2 * s, x + 3 * s, body.bottom() + 2 * s);
            line(1.6, 2.5, x + 3 * s, middle, x + 14 * s, middle);
        } else if (drawing.farEnd() instanceof FarEnd.Short) {
            double low = body.bottom() - 2 * s;
            line(4, 0, x, middle, x + 9 * s, middle, x + 9 * s, low, x, low);
        } else if (drawing.farEnd() instanceof FarEnd.Endless) {
            line(1.6, 4.5, x, body.top() + 2 * s, x + 24 * s, body.top() + 2 * s);
            line(1.6, 4.5, x, body.bottom() - 2 * s, x + 24 * s, body.bottom() - 2 * s);
        } else {
            drawResistor(x + 3 * s);
        }
        drawLabel(words.farEnd(drawing.farEnd()), x);
    }

    private void line(double thickness, double dash, double... points) {
        double[] xs = new double[points.length / 2];
        double[] ys = new double[points.length / 2];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = points[2 * i];
            ys[i] = points[2 * i + 1];
        }
        sheet.pen().line(xs, ys, thickness * s, dash * s, sheet.ink(Ink.TEXT));
    }

    private void drawResistor(double x) {
        double y = body.middle();
        double up = y - 5 * s;
        double down = y + 5 * s;
        double step = 3 * s;
        double end = x + 7 * step;
        line(
                1.6,
                0,
                x,
                y,
                x + step,
                up,
                x + 2 * step,
                down,
                x + 3 * step,
                up,
                x + 4 * step,
                down,
                x + 5 * step,
                up,
                x + 6 * step,
                y,
                end,
                y,
                end,
                body.bottom() + 4 * s);
    }

    private void drawLabel(String text, double x) {
        if (sheet.isShown(x)) {
            double most = sheet.area().right() - sheet.smallWidth(text) - 6 * s;
            sheet.write(text, Math.min(x + 4 * s, most), body.top() - 10 * s, Pen.Anchor.START, Ink.FAINT);
        }
    }
}

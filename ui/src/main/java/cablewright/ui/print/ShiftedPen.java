// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.ui.drawing.pen.Pen;

/**
 * Draws with another pen, a little further up.
 *
 * @param pen the other pen
 * @param up how far [points]
 */
record ShiftedPen(Pen pen, double up) implements Pen {

    private double[] shifted(double[] ys) {
        double[] there = ys.clone();
        for (int i = 0; i < there.length; i++) {
            there[i] -= up;
        }
        return there;
    }

    @Override
    public void fill(double x, double y, double width, double height, int colour) {
        pen.fill(x, y - up, width, height, colour);
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, int colour) {
        pen.line(xs, shifted(ys), thickness, dash, colour);
    }

    @Override
    public void shape(double[] xs, double[] ys, int colour) {
        pen.shape(xs, shifted(ys), colour);
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, int colour) {
        pen.text(text, x, y - up, anchor, size, colour);
    }
}

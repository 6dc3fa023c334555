// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.screen;

import cablewright.ui.drawing.pen.Pen;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Draws on a canvas. */
public final class CanvasPen implements Pen {

    private final GraphicsContext graphics;
    private final String family;

    /**
     * Takes a canvas to draw on.
     *
     * @param graphics what draws on it
     * @param family family of its letters
     */
    public CanvasPen(GraphicsContext graphics, String family) {
        this.graphics = graphics;
        this.family = family;
        graphics.setLineCap(StrokeLineCap.BUTT);
        graphics.setLineJoin(StrokeLineJoin.ROUND);
    }

    private static Color colour(int rgb) {
        return Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    @Override
    public void fill(double x, double y, double width, double height, int colour) {
        graphics.setFill(colour(colour));
        graphics.fillRect(x, y, width, height);
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, int colour) {
        graphics.setStroke(colour(colour));
        graphics.setLineWidth(thickness);
        if (dash > 0) {
            graphics.setLineDashes(dash, dash);
        } else {
            graphics.setLineDashes();
        }
        graphics.strokePolyline(xs, ys, xs.length);
    }

    @Override
    public void shape(double[] xs, double[] ys, int colour) {
        graphics.setFill(colour(colour));
        graphics.fillPolygon(xs, ys, xs.length);
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, int colour) {
        graphics.setFill(colour(colour));
        graphics.setFont(Font.font(family, size));
        switch (anchor) {
            case START:
                graphics.setTextAlign(TextAlignment.LEFT);
                break;
            case MIDDLE:
                graphics.setTextAlign(TextAlignment.CENTER);
                break;
            default:
                graphics.setTextAlign(TextAlignment.RIGHT);
                break;
        }
        graphics.fillText(text, x, y);
    }
}

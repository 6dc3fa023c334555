// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.screen;

import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/**
 * Draws on a canvas. A line that runs from left to right and turns back up and down all the time, such as a noisy trace, is
 * filled column by column of pixels: its picture is the same, and it costs a small part of what a stroke does.
 */
public final class CanvasPen implements Pen {

    /** Pixels of turning back up or down, for each pixel across, beyond which columns are filled. */
    private static final double TURNING_BACK = 1.5;

    private static final int LEAST_POINTS = 100;

    private final GraphicsContext graphics;
    private final String family;
    private final Map<Double, Font> fonts = new HashMap<>();
    private final Text measure = new Text();

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

    private static Color paint(Colour colour) {
        int rgb = colour.rgb();
        return Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, colour.opacity());
    }

    private Font font(double size) {
        return fonts.computeIfAbsent(size, wanted -> Font.font(family, wanted));
    }

    @Override
    public double sharp(double place) {
        return Math.floor(place) + 0.5;
    }

    @Override
    public double columns() {
        return 1;
    }

    @Override
    public void fill(double x, double y, double width, double height, Colour colour) {
        graphics.setFill(paint(colour));
        graphics.fillRect(x, y, width, height);
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, Colour colour) {
        if (dash == 0 && isNoisy(xs, ys)) {
            columns(xs, ys, thickness, colour);
            return;
        }
        graphics.setStroke(paint(colour));
        graphics.setLineWidth(thickness);
        if (dash > 0) {
            graphics.setLineDashes(dash, dash);
        } else {
            graphics.setLineDashes();
        }
        graphics.strokePolyline(xs, ys, xs.length);
    }

    /** Whether a line goes from left to right and turns back up and down so much that it is noise rather than a shape. */
    private static boolean isNoisy(double[] xs, double[] ys) {
        if (xs.length < LEAST_POINTS) {
            return false;
        }
        double back = 0;
        double before = 0;
        for (int i = 1; i < xs.length; i++) {
            if (xs[i] < xs[i - 1]) {
                return false;
            }
            double step = ys[i] - ys[i - 1];
            back += step * before < 0 ? Math.min(Math.abs(step), Math.abs(before)) : 0;
            before = step;
        }
        return back > TURNING_BACK * (xs[xs.length - 1] - xs[0]);
    }

    /** Fills each column of pixels from the lowest to the highest place that the line passes in it. */
    private void columns(double[] xs, double[] ys, double thickness, Colour colour) {
        graphics.setFill(paint(colour));
        int next = 1;
        for (double column = Math.floor(xs[0]); column < xs[xs.length - 1]; column++) {
            double from = at(xs, ys, next, Math.max(xs[0], column));
            double least = from;
            double most = from;
            while (next < xs.length && xs[next] < column + 1) {
                least = Math.min(least, ys[next]);
                most = Math.max(most, ys[next]);
                next++;
            }
            double to = next < xs.length ? at(xs, ys, next, column + 1) : ys[ys.length - 1];
            least = Math.min(least, to) - thickness / 2;
            most = Math.max(most, to) + thickness / 2;
            graphics.fillRect(column, least, 1, most - least);
        }
    }

    /** How high the line is at a place between the point before {@code next} and {@code next}. */
    private static double at(double[] xs, double[] ys, int next, double x) {
        double width = xs[next] - xs[next - 1];
        return width == 0 ? ys[next] : ys[next - 1] + (x - xs[next - 1]) / width * (ys[next] - ys[next - 1]);
    }

    @Override
    public void shape(double[] xs, double[] ys, Colour colour) {
        graphics.setFill(paint(colour));
        graphics.fillPolygon(xs, ys, xs.length);
    }

    @Override
    public void disc(double x, double y, double radius, Colour colour) {
        graphics.setFill(paint(colour));
        graphics.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, Colour colour) {
        graphics.setFill(paint(colour));
        graphics.setFont(font(size));
        graphics.setTextAlign(
                switch (anchor) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        graphics.fillText(text, x, y);
    }

    @Override
    public double width(String text, double size) {
        measure.setFont(font(size));
        measure.setText(text);
        return measure.getLayoutBounds().getWidth();
    }

    /** Clips at whole pixels, which costs nothing; a clip between pixels is a mask. */
    @Override
    public void within(Box box, Runnable drawing) {
        double left = Math.floor(box.x());
        double top = Math.floor(box.y());
        graphics.save();
        graphics.beginPath();
        graphics.rect(left, top, Math.ceil(box.right()) - left, Math.ceil(box.bottom()) - top);
        graphics.clip();
        drawing.run();
        graphics.restore();
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.util.ArrayList;
import java.util.List;

/** Remembers what was drawn. Its letters are half as wide as they are high. */
public final class RecordingPen implements Pen {

    public record Line(double[] xs, double[] ys, double thickness, double dash, Colour colour) {}

    public record Text(String text, double x, double y, Anchor anchor, double size, Colour colour) {

        public double left() {
            return x - anchor.share() * width();
        }

        public double width() {
            return 0.5 * size * text.length();
        }
    }

    private final List<Line> lines = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final List<Colour> shapes = new ArrayList<>();

    public List<Line> lines() {
        return lines;
    }

    public List<Text> texts() {
        return texts;
    }

    /** The colours of what was filled, in their order. */
    public List<Colour> filled() {
        return shapes;
    }

    @Override
    public void fill(double x, double y, double width, double height, Colour colour) {
        if (width < 0 || height < 0) {
            throw new AssertionError("a box of " + width + " by " + height);
        }
        shapes.add(colour);
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, Colour colour) {
        lines.add(new Line(xs.clone(), ys.clone(), thickness, dash, colour));
    }

    @Override
    public void shape(double[] xs, double[] ys, Colour colour) {
        shapes.add(colour);
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, Colour colour) {
        texts.add(new Text(text, x, y, anchor, size, colour));
    }

    @Override
    public double width(String text, double size) {
        return 0.5 * size * text.length();
    }

    @Override
    public void within(Box box, Runnable drawing) {
        drawing.run();
    }
}

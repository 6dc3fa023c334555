// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Draws in memory with {@value #PIXELS_PER_POINT} pixels to the point, and writes PNG. Needs no display and no fonts. */
final class PngPen implements Pen {

    static final int PIXELS_PER_POINT = 2;

    private final BufferedImage image;
    private final Graphics2D graphics;
    private final GlyphFont font = new GlyphFont();

    PngPen(double width, double height) {
        image = new BufferedImage(
                (int) width * PIXELS_PER_POINT, (int) height * PIXELS_PER_POINT, BufferedImage.TYPE_INT_RGB);
        graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(PIXELS_PER_POINT, PIXELS_PER_POINT);
    }

    @Override
    public void fill(double x, double y, double width, double height, Colour colour) {
        graphics.setColor(awt(colour));
        graphics.fill(new Rectangle2D.Double(x, y, width, height));
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, Colour colour) {
        graphics.setColor(awt(colour));
        float[] dashes = dash > 0 ? new float[] {(float) dash, (float) dash} : null;
        graphics.setStroke(
                new BasicStroke((float) thickness, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1f, dashes, 0f));
        graphics.draw(path(xs, ys));
    }

    @Override
    public void shape(double[] xs, double[] ys, Colour colour) {
        graphics.setColor(awt(colour));
        Path2D path = path(xs, ys);
        path.closePath();
        graphics.fill(path);
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, Colour colour) {
        double start = x - font.width(text, size) * anchor.share();
        graphics.setColor(awt(colour));
        GeneralPath outline = font.outline(text, start, y, size);
        graphics.fill(outline);
    }

    @Override
    public double width(String text, double size) {
        return font.width(text, size);
    }

    @Override
    public void within(Box box, Runnable drawing) {
        Shape before = graphics.getClip();
        graphics.clip(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
        drawing.run();
        graphics.setClip(before);
    }

    private static Color awt(Colour colour) {
        return new Color(colour.rgb() | (int) Math.round(255 * colour.opacity()) << 24, true);
    }

    private static Path2D path(double[] xs, double[] ys) {
        Path2D path = new Path2D.Double();
        path.moveTo(xs[0], ys[0]);
        for (int i = 1; i < xs.length; i++) {
            path.lineTo(xs[i], ys[i]);
        }
        return path;
    }

    byte[] bytes() throws IOException {
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }
}

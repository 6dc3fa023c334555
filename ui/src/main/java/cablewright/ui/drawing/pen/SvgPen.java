// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Writes Scalable Vector Graphics 1.1 (W3C Recommendation, 2011); texts stay texts, as wide as they were measured in any font. */
final class SvgPen implements Pen {

    private final StringBuilder out = new StringBuilder();
    private final GlyphFont font = new GlyphFont();
    private int clips;

    SvgPen(double width, double height, String title) {
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$spt\" height=\"%2$spt\" viewBox=\"0 0 %1$s %2$s\" "
                        + "font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\">\n",
                number(width),
                number(height)));
        out.append("<title>").append(escaped(title)).append("</title>\n");
    }

    @Override
    public void fill(double x, double y, double width, double height, Colour colour) {
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" %s/>\n",
                number(x),
                number(y),
                number(width),
                number(height),
                paint("fill", colour)));
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, Colour colour) {
        out.append("<polyline fill=\"none\" ").append(paint("stroke", colour));
        out.append(" stroke-width=\"").append(number(thickness)).append('"');
        if (dash > 0) {
            out.append(" stroke-dasharray=\"").append(number(dash)).append('"');
        }
        out.append(" stroke-linejoin=\"round\" points=\"");
        appendPoints(xs, ys);
        out.append("\"/>\n");
    }

    @Override
    public void shape(double[] xs, double[] ys, Colour colour) {
        out.append("<polygon ").append(paint("fill", colour)).append(" points=\"");
        appendPoints(xs, ys);
        out.append("\"/>\n");
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, Colour colour) {
        if (text.isBlank()) {
            return;
        }
        String way = anchor == Anchor.START ? "start" : anchor == Anchor.MIDDLE ? "middle" : "end";
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\" textLength=\"%s\" %s>",
                number(x),
                number(y),
                number(size),
                way,
                number(width(text, size)),
                paint("fill", colour)));
        out.append(escaped(text)).append("</text>\n");
    }

    @Override
    public double width(String text, double size) {
        return font.width(text, size);
    }

    @Override
    public void within(Box box, Runnable drawing) {
        clips++;
        out.append(String.format(
                Locale.ROOT,
                "<clipPath id=\"clip%1$d\"><rect x=\"%2$s\" y=\"%3$s\" width=\"%4$s\" height=\"%5$s\"/></clipPath>\n"
                        + "<g clip-path=\"url(#clip%1$d)\">\n",
                clips,
                number(box.x()),
                number(box.y()),
                number(box.width()),
                number(box.height())));
        drawing.run();
        out.append("</g>\n");
    }

    private void appendPoints(double[] xs, double[] ys) {
        for (int i = 0; i < xs.length; i++) {
            out.append(i == 0 ? "" : " ").append(number(xs[i])).append(',').append(number(ys[i]));
        }
    }

    byte[] bytes() {
        return (out + "</svg>\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceFirst("\\.?0+$", "");
    }

    private static String paint(String what, Colour colour) {
        String paint = String.format(Locale.ROOT, "%s=\"#%06X\"", what, colour.rgb());
        return colour.opacity() == 1 ? paint : paint + " " + what + "-opacity=\"" + number(colour.opacity()) + '"';
    }

    /** XML 1.0 allows no control characters but tab and line ends; they are left out. */
    private static String escaped(String text) {
        return text.replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uFFFF]", "")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
